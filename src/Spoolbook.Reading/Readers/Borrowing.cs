using System.Collections.Immutable;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Readers;

/// <summary>
/// What a production takes from its school: what it does not say itself. Of lists, such as kit and stock, it takes only what it names
/// or has on loan. Each value keeps its place in the school's file.
/// </summary>
static class Borrowing
{
    /// <param name="folder">The production's path from the school's folder.</param>
    public static Production From(Department school, Production production, string folder)
    {
        var loans = school.Loans.Where(l => IsTo(l, production, folder)).ToImmutableArray();
        return Crew(school, Lab(school, Lots(school, Kit(school, production with { SchoolLoans = loans })))) with
        {
            InSchool = folder,
            School = Name(school.School, production.School),
        };
    }

    static bool IsTo(KitLoan loan, Production production, string folder) =>
        loan.To.Value == folder || string.Equals(loan.To.Value, production.Code.Value, StringComparison.OrdinalIgnoreCase);

    static School? Name(School? theirs, School? own) =>
        theirs is null || own is null
            ? own ?? theirs
            : own with
            {
                Name = own.Name ?? theirs.Name,
                Logo = own.Logo ?? theirs.Logo,
                Colours = own.Colours.IsEmpty ? theirs.Colours : own.Colours,
            };

    static Production Kit(Department school, Production production)
    {
        var named = production.Rolls.SelectMany(PiecesOf).OfType<Located<string>>().Select(n => n.Value);
        var wanted = named.Concat(production.SchoolLoans.Select(l => l.Piece.Value)).ToHashSet(StringComparer.Ordinal);
        wanted.ExceptWith(KitBook.PiecesOf(production).Select(p => p.Name.Value));
        var bodies = school.Bodies.Where(b => wanted.Contains(b.Name.Value)).ToList();
        wanted.UnionWith(bodies.SelectMany(b => b.Turret).Select(l => l.Value).Except(production.Lenses.Select(l => l.Name.Value)));
        return production with
        {
            Loan = production.Loan ?? LoanOf(school, production.SchoolLoans),
            Bodies = [.. production.Bodies, .. bodies.Select(b => b with { Returned = Out(b.Name, b.Returned) })],
            Lenses =
            [
                .. production.Lenses,
                .. school.Lenses.Where(l => wanted.Contains(l.Name.Value)).Select(l => l with { Returned = Out(l.Name, l.Returned) }),
            ],
            Filters =
            [
                .. production.Filters,
                .. school.Filters.Where(f => wanted.Contains(f.Name.Value)).Select(f => f with { Returned = Out(f.Name, f.Returned) }),
            ],
            Meters =
            [
                .. production.Meters,
                .. school.Meters.Where(m => wanted.Contains(m.Name.Value)).Select(m => m with { Returned = Out(m.Name, m.Returned) }),
            ],
            Motors =
            [
                .. production.Motors,
                .. school.Motors.Where(m => wanted.Contains(m.Name.Value)).Select(m => m with { Returned = Out(m.Name, m.Returned) }),
            ],
            Items =
            [
                .. production.Items,
                .. school.Items.Where(i => wanted.Contains(i.Name.Value)).Select(i => i with { Returned = Out(i.Name, i.Returned) }),
            ],
        };

        Returned Out(Located<string> name, Returned usual) =>
            production.SchoolLoans.Where(l => l.Piece.Value == name.Value).MaxBy(l => l.Out.Value) is { } loan
                ? usual with
                {
                    Owner = usual.Owner ?? school.School?.Name ?? new Located<string>("", loan.Place),
                    BorrowedBy = loan.By,
                    Due = loan.Back,
                    Back = loan.CameBack is { } day ? new Located<int>(usual.Out, day.Place) : null,
                    Note = loan.Note ?? usual.Note,
                }
                : usual with
                {
                    Owner = usual.Owner ?? school.School?.Name ?? new Located<string>("", name.Place),
                };
    }

    static IEnumerable<Located<string>?> PiecesOf(Roll roll) =>
        [
            roll.Body,
            .. roll.Log.SelectMany(entry => entry is Take take ? [take.Lens, take.Meter, take.Motor, .. take.Filters] : Nothing),
            .. roll.Log.OfType<Reload>().Select(r => r.Body),
        ];

    static readonly Located<string>?[] Nothing = [];

    static Loan? LoanOf(Department school, ImmutableArray<KitLoan> loans) =>
        loans.IsEmpty
            ? null
            : new Loan(loans[0].Place)
            {
                Owner = school.School?.Name,
                BorrowedBy = loans.Select(l => l.By?.Value).Distinct().Count() == 1 ? loans[0].By : null,
                On = loans.Select(l => l.Out).MinBy(d => d.Value),
                Due = loans.Select(l => l.Back).MaxBy(d => d.Value),
                BackOn = loans.All(l => l.CameBack is not null) ? loans.Select(l => l.CameBack!).MaxBy(d => d.Value) : null,
            };

    // The shelf hands out units by the production's stock log: none of the lot is the production's before that.
    static Production Lots(Department school, Production production)
    {
        var named = production
            .Rolls.Select(r => r.Lot)
            .Concat(production.StockLog.Select(e => e.Lot))
            .OfType<Located<string>>()
            .Select(l => l.Value)
            .ToHashSet(StringComparer.Ordinal);
        named.ExceptWith(production.Lots.Select(l => l.Name.Value));
        return production with
        {
            Lots =
            [
                .. production.Lots,
                .. school
                    .Lots.Where(l => named.Contains(l.Name.Value))
                    .Select(l => l with { Units = new Located<int>(0, l.Units.Place), OnShelf = l.Units }),
            ],
        };
    }

    static Production Lab(Department school, Production production)
    {
        var theirs =
            production.Lab?.Name is { } name ? school.Labs.FirstOrDefault(l => l.Lab.Name?.Value == name.Value)
            : school.Labs is [var only] ? only
            : null;
        if (theirs is null)
        {
            return production;
        }

        var lab = theirs.Lab;
        return production with
        {
            Rates = production.Rates ?? theirs.Rates,
            Lab = production.Lab is not { } own
                ? lab
                : own with
                {
                    Name = own.Name ?? lab.Name,
                    Address = Own(own.Address, lab.Address),
                    Contact = Own(own.Contact, lab.Contact),
                    Processes = Own(own.Processes, lab.Processes),
                    PushMost = own.PushMost ?? lab.PushMost,
                    TakesInOn = own.TakesInOn.IsEmpty ? lab.TakesInOn : own.TakesInOn,
                    Services = Own(own.Services, lab.Services),
                    ReturnTo = Own(own.ReturnTo, lab.ReturnTo),
                    BillTo = Own(own.BillTo, lab.BillTo),
                    InDoubt = Own(own.InDoubt, lab.InDoubt),
                    Agreed = Own(own.Agreed, lab.Agreed),
                    Deliver = own.Deliver ?? lab.Deliver,
                },
        };
    }

    static ImmutableArray<Located<string>> Own(ImmutableArray<Located<string>> own, ImmutableArray<Located<string>> theirs) =>
        own.IsEmpty ? theirs : own;

    static Production Crew(Department school, Production production)
    {
        var named = References.PeopleIn(production).OfType<Located<string>>().Select(p => p.Value).ToHashSet(StringComparer.Ordinal);
        named.ExceptWith(production.People.Select(p => p.Id.Value));
        return production with { People = [.. production.People, .. school.People.Where(p => named.Contains(p.Id.Value))] };
    }
}
