using Spoolbook.Film;
using Spoolbook.Film.Exposures;
using Spoolbook.Reading.Keys;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Readers;

/// <summary>People, days, the shot list, and raw stock.</summary>
static class ShootReader
{
    public static Person? Person(MapReader map) =>
        (map.Value(PersonKeys.Id), map.Value(PersonKeys.Name)) is ({ } id, { } name)
            ? new Person(map.Head, id, name, map.Value(PersonKeys.Role))
            : map.LetGo<Person>();

    public static ShootingDay? Day(MapReader map) =>
        (map.Value(DayKeys.Day), map.Value(DayKeys.On)) is ({ } day, { } on)
            ? new ShootingDay(map.Head, day, on, map.Value(DayKeys.Where), map.Value(DayKeys.Note))
            : map.LetGo<ShootingDay>();

    public static PlannedShot? Shot(MapReader map) =>
        map.Value(PlannedShotKeys.Scene) is not { } scene
            ? map.LetGo<PlannedShot>()
            : new PlannedShot(
                map.Head,
                scene,
                map.Value(PlannedShotKeys.Shot),
                map.Value(PlannedShotKeys.What),
                map.Value(PlannedShotKeys.Screen),
                map.Value(PlannedShotKeys.Light)
            )
            {
                Lamps = map.Value(PlannedShotKeys.Lamps),
            };

    public static StockLot? Lot(MapReader map)
    {
        var reciprocity = Reciprocity(map);
        if (
            (
                map.Value(LotKeys.Lot),
                map.Value(LotKeys.Stock),
                map.Value(LotKeys.Index),
                map.Value(LotKeys.Process),
                map.Value(LotKeys.Length),
                map.Value(LotKeys.Units)
            )
            is not
            ({ } name, { } stock, { } index, { } process, { } length, { } units)
        )
        {
            return map.LetGo<StockLot>();
        }

        return new StockLot(map.Head)
        {
            Name = name,
            Stock = stock,
            Emulsion = map.Value(LotKeys.Emulsion),
            Index = index,
            Balance = map.Value(LotKeys.Balance)?.Value ?? ColourBalance.None,
            Reciprocity = reciprocity,
            Process = process,
            Length = length,
            Perforation = map.Value(LotKeys.Perforation),
            Winding = map.Value(LotKeys.Winding),
            Units = units,
            UnitPrice = map.Value(LotKeys.UnitPrice),
            Expires = map.Value(LotKeys.Expires),
            Practice = map.Value(LotKeys.Practice),
            Handling = map.Values(LotKeys.Handling),
        };
    }

    static ReciprocityTable? Reciprocity(MapReader map)
    {
        var lines = map.Maps(LotKeys.Reciprocity)
            .OfType<MapReader>()
            .SelectMany(ReciprocityLine)
            .OrderBy(line => line.Time.Value)
            .ToArray();
        foreach (var (first, again) in lines.Zip(lines.Skip(1)).Where(pair => pair.First.Time.Value == pair.Second.Time.Value))
        {
            map.Context.Findings.Add(
                SheetChecks.WrittenTwice,
                Sentence.Of("sheet/written-twice.message.reciprocity", ("time", again.Time.Value.ToString())),
                again.Time.Place,
                Sentence.Of("sheet/written-twice.help"),
                (first.Time.Place, Sentence.Of("sheet/written-twice.other"))
            );
        }

        var points = lines
            .DistinctBy(line => line.Time.Value)
            .Select(line => new ReciprocityPoint(line.Time.Value.Seconds.ToDouble(), line.Stops.Value))
            .ToArray();
        return points.Length == 0 ? null : new ReciprocityTable(points);
    }

    static IEnumerable<(Located<ExposureTime> Time, Located<double> Stops)> ReciprocityLine(MapReader line) =>
        (line.Value(ReciprocityKeys.Time), line.Value(ReciprocityKeys.Stops)) is ({ } time, { } stops) ? [(time, stops)] : [];
}
