using System.Collections.Immutable;
using Spoolbook.Checks.Accepting;
using Spoolbook.Checks.Running;
using Spoolbook.Shoot;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Departments;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks;

/// <summary>Runs every check, round after round.</summary>
public static class CheckRunner
{
    /// <summary>The first round: what was written down. Rolls that could not be read completely are skipped.</summary>
    /// <param name="read">What reading found.</param>
    public static ImmutableArray<Finding> OnRecords(Production production, IEnumerable<Finding> read)
    {
        var context = new Context(production);
        var held = new SuppressedScope(production, read);
        var findings =
            from check in CheckList.All.OfType<RecordCheck>()
            where !held.Silences(check)
            from finding in Ask(check, production.Place, null, () => check.Look(context))
            where !held.Holds(finding)
            select finding;
        return FindingOrder.Sort(findings);
    }

    /// <summary>
    /// The later rounds: first where the film was, then, in the rolls where that is right, what is on the film. Rolls
    /// with an earlier error are skipped.
    /// </summary>
    /// <param name="earlier">What reading and the first round found.</param>
    public static ImmutableArray<Finding> OnBook(Books books, IEnumerable<Finding> earlier)
    {
        var found = earlier.ToImmutableArray();
        var positions = OnRolls(books.Shoot, Round.Positions, found);
        var strips = OnRolls(books.Shoot, Round.Strips, [.. found, .. positions]);
        var accounts = OnAccounts(books, [.. found, .. positions]);
        return FindingOrder.Sort([.. positions, .. strips, .. accounts]);
    }

    /// <summary>The round over all productions of a school.</summary>
    public static ImmutableArray<Finding> OnDepartment(DepartmentBook book) =>
        FindingOrder.Sort(
            from check in CheckList.All.OfType<DepartmentCheck>()
            from finding in Ask(check, book.Department.Place, null, () => check.Look(book))
            select finding
        );

    static ImmutableArray<Finding> OnRolls(ShootBook book, Round round, ImmutableArray<Finding> earlier)
    {
        var context = new Context(book.Production);
        var held = new SuppressedScope(book.Production, earlier);
        var findings =
            from check in CheckList.All.OfType<RollCheck>()
            where check.Round == round && !held.Silences(check)
            from roll in book.Rolls
            where !held.Holds(roll.Roll)
            from finding in Ask(check, roll.Roll.Name.Place, roll.Roll, () => check.Look(context, roll))
            select finding;
        return [.. findings];
    }

    static ImmutableArray<Finding> OnAccounts(Books books, ImmutableArray<Finding> earlier)
    {
        var context = new Context(books.Production);
        var held = new SuppressedScope(books.Production, earlier);
        var findings =
            from check in CheckList.All.OfType<BookCheck>()
            where !held.Silences(check)
            from finding in Ask(check, books.Production.Place, null, () => check.Look(context, books))
            select finding;
        return [.. findings];
    }

    // Nothing in a sheet may crash the program: a check that throws is our fault, and the finding says so.
    static ImmutableArray<Finding> Ask(Check check, Place place, Roll? roll, Func<IEnumerable<Finding>> look)
    {
        try
        {
            return [.. look()];
        }
        catch (Exception e)
        {
            return [Fault.Of(check, place, roll, e)];
        }
    }
}
