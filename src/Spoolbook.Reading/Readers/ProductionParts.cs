using System.Collections.Immutable;
using Spoolbook.Reading.Keys;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Readers;

/// <summary>Collects a production file by file, and joins it at the end.</summary>
sealed class ProductionParts(ReadingContext context)
{
    readonly List<Part> _unread = [];
    readonly List<Roll> _rolls = [];
    Production? _production;
    Department? _school;
    string _inSchool = "";
    bool _hasHead;

    public void Add(FileKind kind, MapReader map)
    {
        CheckVersion(map);
        if (kind == FileKind.Roll)
        {
            _rolls.AddRange(Kept(Part.Rolls, RollReader.Read(map)));
            return;
        }

        if (kind == FileKind.Production)
        {
            _production = Head(map);
            _hasHead = true;
        }

        _production = Lists(_production ?? Nameless(map.Head), map);
    }

    public void Miss(FileKind kind) =>
        _unread.AddRange(
            kind switch
            {
                FileKind.Stock => [Part.Lots],
                FileKind.Kit => [Part.Kit],
                FileKind.Roll => [Part.Rolls],
                _ => [Part.People, Part.Days, Part.Shots, Part.Lab, Part.Lots, Part.Kit],
            }
        );

    /// <summary>Takes the school's file, from which the production has what it does not say itself.</summary>
    /// <param name="forLoans">Where its loans are read in.</param>
    /// <param name="production">The production's path from the school's folder.</param>
    public void Borrow(MapReader map, ReadingContext forLoans, string production)
    {
        CheckVersion(map);
        (_school, _inSchool) = (DepartmentReader.Read(map, forLoans), production);
    }

    /// <summary>The school's file cannot be read: what seems missing may be in it.</summary>
    public void MissSchool() => _unread.AddRange([Part.People, Part.Lab, Part.Lots, Part.Kit]);

    /// <summary>The whole production; null where nothing of it was read.</summary>
    public Production? Joined()
    {
        if (_production is null && _rolls.Count == 0)
        {
            return null;
        }

        if (!_hasHead)
        {
            Miss(FileKind.Production);
        }

        var production = _production ?? Nameless(_rolls[0].Place);
        production = production with { Rolls = [.. production.Rolls.Concat(_rolls)] };
        production = _school is { } school ? Borrowing.From(school, production, _inSchool) : production;
        return production with
        {
            Days = [.. production.Days.OrderBy(d => (d.On.Value, d.Number.Value))],
            Rolls = [.. production.Rolls.Select(r => InTheOnlyBody(production, r)).Order(NaturalOrder.ByName)],
            Unread = [.. _unread.Distinct().Order()],
        };
    }

    // A body that could not be read may be the one the crew used.
    Roll InTheOnlyBody(Production production, Roll roll) =>
        roll.Body is null && production.Bodies is [var only] && !_unread.Contains(Part.Kit)
            ? roll with
            {
                Body = new Located<string>(only.Name.Value, roll.Name.Place),
                BodyIsTaken = true,
            }
            : roll;

    /// <summary>A production without its own file: enough to check its rolls.</summary>
    static Production Nameless(Place place) => new(place) { Title = new Located<string>("", place), Code = new Located<string>("", place) };

    Production Head(MapReader map)
    {
        var nameless = Nameless(map.Head);
        context.Gauge = map.Value(ProductionKeys.Gauge)?.Value ?? context.Gauge;
        var plan = map.Map(ProductionKeys.Plan);
        return nameless with
        {
            Title = map.Value(ProductionKeys.Title) ?? nameless.Title,
            Code = map.Value(ProductionKeys.Code) ?? nameless.Code,
            Gauge = context.Gauge,
            ProjectedAt = map.Value(ProductionKeys.ProjectAt)?.Value ?? nameless.ProjectedAt,
            Paper = map.Value(ProductionKeys.Paper)?.Value ?? nameless.Paper,
            Labels = map.Map(ProductionKeys.Labels) is { } labels
                ? new CanLabels(labels.Head, labels.Value(LabelKeys.Sheet), labels.Value(LabelKeys.Start))
                : null,
            Units = map.Value(ProductionKeys.Units)?.Value ?? nameless.Units,
            Language = map.Value(ProductionKeys.Language)?.Value ?? nameless.Language,
            MeterFor = map.Value(ProductionKeys.MeterFor)?.Value ?? nameless.MeterFor,
            Invented = map.Value(ProductionKeys.Invented),
            School = map.Map(ProductionKeys.School) is { } school ? SchoolReader.Read(school) : null,
            Director = map.Value(ProductionKeys.Director),
            Cinematographer = map.Value(ProductionKeys.Cinematographer),
            Learners = map.Values(ProductionKeys.Learners),
            People = Read(map, ProductionKeys.People, Part.People, ShootReader.Person),
            Days = Read(map, ProductionKeys.Days, Part.Days, ShootReader.Day),
            Shots = Read(map, ProductionKeys.Shots, Part.Shots, ShootReader.Shot),
            RunningTime = plan?.Value(PlanKeys.RunningTime),
            PlannedRatio = plan?.Value(PlanKeys.Ratio),
            Lab = Single(map, ProductionKeys.Lab, LabReader.Lab),
            Rates = Single(map, ProductionKeys.Rates, LabReader.Rates),
            Accept = WaiverReader.ReadAll(map, ProductionKeys.Accept),
            Rules = map.Map(ProductionKeys.Rules) is { } rules ? HouseRulesReader.Read(rules) : null,
        };
    }

    /// <summary>Adds the lists of stock.yaml and kit.yaml, or of the one file that holds everything.</summary>
    Production Lists(Production to, MapReader map) =>
        to with
        {
            Lots = to.Lots.AddRange(Read(map, FileKeys.Lots, Part.Lots, ShootReader.Lot)),
            StockLog = to.StockLog.AddRange(
                map.Items(FileKeys.StockLog).SelectMany(item => Kept(Part.Lots, StockLogReader.Read(item, context)))
            ),
            Loan = map.Map(FileKeys.Loan) is { } loan ? KitReader.Loan(loan) : to.Loan,
            Bodies = to.Bodies.AddRange(Read(map, FileKeys.Bodies, Part.Kit, KitReader.Body)),
            Lenses = to.Lenses.AddRange(Read(map, FileKeys.Lenses, Part.Kit, KitReader.Lens)),
            Filters = to.Filters.AddRange(Read(map, FileKeys.Filters, Part.Kit, KitReader.Filter)),
            Meters = to.Meters.AddRange(Read(map, FileKeys.Meters, Part.Kit, KitReader.Meter)),
            Motors = to.Motors.AddRange(Read(map, FileKeys.Motors, Part.Kit, KitReader.Motor)),
            Items = to.Items.AddRange(Read(map, FileKeys.Items, Part.Kit, KitReader.Item)),
            Rolls = to.Rolls.AddRange(Read(map, FileKeys.Rolls, Part.Rolls, RollReader.Read)),
        };

    ImmutableArray<T> Read<T>(MapReader map, MapsKey key, Part part, Func<MapReader, T?> read)
        where T : class
    {
        if (map.Has(key) && !map.IsList(key))
        {
            _unread.Add(part);
        }

        return [.. map.Maps(key).SelectMany(item => Kept(part, item is null ? null : read(item)))];
    }

    T? Single<T>(MapReader map, MapKey key, Func<MapReader, T?> read)
        where T : class
    {
        var record = map.Map(key) is { } inner ? read(inner) : null;
        if (record is null && map.Has(key))
        {
            _unread.Add(Part.Lab);
        }

        return record;
    }

    IEnumerable<T> Kept<T>(Part part, T? record)
        where T : class
    {
        if (record is not null)
        {
            return [record];
        }

        _unread.Add(part);
        return [];
    }

    void CheckVersion(MapReader map)
    {
        if (map.Value(FileKeys.Version) is { Value: not "1" } version)
        {
            context.Findings.Add(
                SheetChecks.UnsupportedVersion,
                Sentence.Of("sheet/unsupported-version.message", ("version", Quote.Short(version.Value))),
                version.Place,
                Sentence.Of("sheet/unsupported-version.help")
            );
        }
    }
}
