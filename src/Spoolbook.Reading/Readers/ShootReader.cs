using Spoolbook.Film.Exposures;
using Spoolbook.Reading.Keys;
using Spoolbook.Reading.Maps;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Readers;

/// <summary>People, days, the shot list, and raw stock.</summary>
static class ShootReader
{
    public static Person? Person(MapReader map) =>
        map.Kept(new Person(map.Head, map.Must(PersonKeys.Id), map.Must(PersonKeys.Name), map.Value(PersonKeys.Role)));

    public static ShootingDay? Day(MapReader map) =>
        map.Kept(new ShootingDay(map.Head, map.Must(DayKeys.Day), map.Must(DayKeys.On), map.Value(DayKeys.Where), map.Value(DayKeys.Note)));

    public static PlannedShot? Shot(MapReader map) =>
        map.Kept(new PlannedShot(map.Head, map.Must(PlannedShotKeys.Scene), map.Value(PlannedShotKeys.Shot), map.Value(PlannedShotKeys.What), map.Value(PlannedShotKeys.Screen), map.Value(PlannedShotKeys.Light)) { Lamps = map.Value(PlannedShotKeys.Lamps) });

    public static StockLot? Lot(MapReader map) => map.Kept(new StockLot(map.Head)
    {
        Name = map.Must(LotKeys.Lot),
        Stock = map.Must(LotKeys.Stock),
        Emulsion = map.Value(LotKeys.Emulsion),
        Index = map.Must(LotKeys.Index),
        Balance = map.Value(LotKeys.Balance)?.Value ?? ColourBalance.None,
        Reciprocity = Reciprocity(map),
        Process = map.Must(LotKeys.Process),
        Length = map.Must(LotKeys.Length),
        Units = map.Must(LotKeys.Units),
        UnitPrice = map.Value(LotKeys.UnitPrice),
        Expires = map.Value(LotKeys.Expires),
        Practice = map.Value(LotKeys.Practice),
        Handling = map.Values(LotKeys.Handling),
    });

    static ReciprocityTable? Reciprocity(MapReader map)
    {
        var lines = map.Maps(LotKeys.Reciprocity).OfType<MapReader>()
            .Select(line => (Time: line.Value(ReciprocityKeys.Time), Stops: line.Value(ReciprocityKeys.Stops)))
            .Where(line => line is { Time: not null, Stops: not null })
            .OrderBy(line => line.Time!.Value)
            .ToArray();
        foreach (var (first, again) in lines.Zip(lines.Skip(1)).Where(pair => pair.First.Time!.Value == pair.Second.Time!.Value))
        {
            map.Context.Findings.Add(SheetChecks.WrittenTwice, $"The reciprocity table has {again.Time!.Value} twice.", again.Time.Place, "Keep one of the two.", (first.Time!.Place, "the other is here"));
        }

        var points = lines.DistinctBy(line => line.Time!.Value).Select(line => new ReciprocityPoint(line.Time!.Value.Seconds.ToDouble(), line.Stops!.Value)).ToArray();
        return points.Length == 0 ? null : new ReciprocityTable(points);
    }
}
