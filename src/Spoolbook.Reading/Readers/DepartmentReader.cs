using System.Collections.Immutable;
using Spoolbook.Reading.Keys;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Readers;

/// <summary>The school's own file.</summary>
static class DepartmentReader
{
    /// <summary>Reads what is there.</summary>
    /// <param name="forLoans">
    /// Where loans and holidays are read in: a slip in another production's loan is the store's to mend, and keeps nobody from making
    /// papers.
    /// </param>
    public static Department Read(MapReader map, ReadingContext forLoans) =>
        new(map.Head)
        {
            School = map.Map(ProductionKeys.School) is { } school ? SchoolReader.Read(school) : null,
            People = All(map, ProductionKeys.People, ShootReader.Person),
            Lots = All(map, FileKeys.Lots, ShootReader.Lot),
            Bodies = All(map, FileKeys.Bodies, KitReader.Body),
            Lenses = All(map, FileKeys.Lenses, KitReader.Lens),
            Filters = All(map, FileKeys.Filters, KitReader.Filter),
            Meters = All(map, FileKeys.Meters, KitReader.Meter),
            Motors = All(map, FileKeys.Motors, KitReader.Motor),
            Items = All(map, FileKeys.Items, KitReader.Item),
            Labs = All(map, DepartmentKeys.Labs, Lab),
            Budget = map.Value(DepartmentKeys.Budget),
            Language = map.Value(DepartmentKeys.Language),
            Units = map.Value(DepartmentKeys.Units),
            Holidays = map.In(forLoans).Values(DepartmentKeys.Holidays),
            Loans = All(map.In(forLoans), DepartmentKeys.Loans, Loan),
        };

    static ImmutableArray<T> All<T>(MapReader map, MapsKey key, Func<MapReader, T?> read)
        where T : class => [.. map.Maps(key).OfType<MapReader>().Select(read).OfType<T>()];

    static SchoolLab Lab(MapReader map) =>
        new(LabReader.Lab(map), map.Map(SchoolLabKeys.Rates) is { } rates ? LabReader.Rates(rates) : null);

    static KitLoan? Loan(MapReader map) =>
        (map.Value(KitLoanKeys.Piece), map.Value(KitLoanKeys.To), map.Value(KitLoanKeys.Out), map.Value(KitLoanKeys.Back))
            is ({ } piece, { } to, { } goes, { } back)
            ? new KitLoan(map.Head)
            {
                Piece = piece,
                To = to,
                Out = goes,
                Back = back,
                CameBack = map.Value(KitLoanKeys.CameBack),
                Condition = map.Value(KitLoanKeys.Condition),
                By = map.Value(KitLoanKeys.By),
                Missing = map.Values(KitLoanKeys.Missing),
                Note = map.Value(KitLoanKeys.Note),
            }
            : map.LetGo<KitLoan>();
}
