using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Readers;

/// <summary>
/// People and rolls that are named and not listed. Lots and kit have checks of their own. A list that could not be read whole gets no
/// finding: the name may be in the part that is missing.
/// </summary>
static class References
{
    public static void Check(Production production, FindingList findings)
    {
        CheckPeople(production, PeopleApart(production), findings);
        CheckTurrets(production, findings);
        CheckStockLog(production, findings);
        CheckConsignments(production, findings);
        foreach (var roll in production.Rolls)
        {
            findings.Roll = roll.Name.Value;
            CheckPeople(production, PeopleOf(roll), findings);
            CheckParent(production, roll, findings);
        }

        findings.Roll = null;
    }

    /// <summary>Who a school's loans went to, where it lists people.</summary>
    public static void Check(Department school, FindingList findings)
    {
        if (!school.People.IsEmpty)
        {
            CheckPeople(
                school.People,
                school.Loans.Select(l => l.By),
                name => Sentence.Of("sheet/unknown-reference.message.borrower", ("name", name)),
                findings
            );
        }
    }

    /// <summary>Everybody whom a production names, by id; null where nobody is written.</summary>
    public static IEnumerable<Located<string>?> PeopleIn(Production production) =>
        PeopleApart(production).Concat(production.Rolls.SelectMany(PeopleOf));

    // Apart from the rolls.
    static IEnumerable<Located<string>?> PeopleApart(Production production) =>
        [
            .. production.Accept.Select(w => w.By),
            production.Director,
            production.Cinematographer,
            .. production.Learners,
            production.Loan?.BorrowedBy,
            .. KitBook.PiecesOf(production).Select(p => p.Returned.BorrowedBy),
        ];

    static IEnumerable<Located<string>?> PeopleOf(Roll roll) =>
        [
            roll.Load.By,
            .. roll.Log.Select(e =>
                e switch
                {
                    Take take => take.By,
                    Reload reload => reload.By,
                    _ => null,
                }
            ),
            roll.Unload?.By,
            .. roll.Accept.Select(w => w.By),
        ];

    static void CheckPeople(Production production, IEnumerable<Located<string>?> ids, FindingList findings)
    {
        // A production that lists nobody itself writes names as they come.
        if (production.People.All(p => p.Place.IsAbove) || production.Unread.Contains(Part.People))
        {
            return;
        }

        CheckPeople(production.People, ids, name => Sentence.Of("sheet/unknown-reference.message.person", ("name", name)), findings);
    }

    static void CheckPeople(
        IReadOnlyCollection<Person> people,
        IEnumerable<Located<string>?> ids,
        Func<string, Sentence> message,
        FindingList findings
    )
    {
        // If an id is there twice, one of the two is a slip for the id we miss.
        var known = people.Select(p => p.Id.Value).ToHashSet(StringComparer.Ordinal);
        if (known.Count < people.Count)
        {
            return;
        }

        foreach (var id in ids.OfType<Located<string>>().Where(i => !known.Contains(i.Value)))
        {
            findings.Add(
                SheetChecks.UnknownReference,
                message(Quote.Short(id.Value)),
                id.Place,
                Help(id.Value, known, Sentence.Of("sheet/unknown-reference.help.person"))
            );
        }
    }

    static void CheckParent(Production production, Roll roll, FindingList findings)
    {
        if (roll.ShortEndOf is not { } parent)
        {
            return;
        }

        if (parent.Value == roll.Name.Value)
        {
            findings.Add(
                SheetChecks.UnknownReference,
                Sentence.Of("sheet/unknown-reference.message.itself", ("name", Quote.Short(parent.Value))),
                parent.Place,
                Sentence.Of("sheet/unknown-reference.help.itself")
            );
        }
        else if (
            production.RollNamed(parent.Value) is null
            && !production.Unread.Contains(Part.Rolls)
            && production.Rolls.DistinctBy(r => r.Name.Value).Count() == production.Rolls.Length
        )
        {
            var others = production.Rolls.Select(r => r.Name.Value).Where(n => n != roll.Name.Value);
            findings.Add(
                SheetChecks.UnknownReference,
                Sentence.Of("sheet/unknown-reference.message.parent", ("name", Quote.Short(parent.Value))),
                parent.Place,
                Help(parent.Value, others, Sentence.Of("sheet/unknown-reference.help.roll"))
            );
        }
    }

    static void CheckTurrets(Production production, FindingList findings)
    {
        // If a name is there twice, one of the two is a slip for the name we miss.
        var known = production.Lenses.Select(l => l.Name.Value).ToHashSet(StringComparer.Ordinal);
        if (known.Count < production.Lenses.Length || production.Unread.Contains(Part.Kit))
        {
            return;
        }

        foreach (var lens in production.Bodies.SelectMany(b => b.Turret).Where(l => !known.Contains(l.Value)))
        {
            findings.Add(
                SheetChecks.UnknownReference,
                Sentence.Of("sheet/unknown-reference.message.turret", ("name", Quote.Short(lens.Value))),
                lens.Place,
                Help(lens.Value, known, Sentence.Of("sheet/unknown-reference.help.turret"))
            );
        }
    }

    static void CheckStockLog(Production production, FindingList findings)
    {
        var known = production.Rolls.Select(r => r.Name.Value).ToHashSet(StringComparer.Ordinal);
        foreach (
            var parent in production
                .StockLog.Select(e => e.ShortEndOf)
                .OfType<Located<string>>()
                .Where(p => !known.Contains(p.Value) && !production.Unread.Contains(Part.Rolls))
        )
        {
            findings.Add(
                SheetChecks.UnknownReference,
                Sentence.Of("sheet/unknown-reference.message.stock-log", ("name", Quote.Short(parent.Value))),
                parent.Place,
                Help(parent.Value, known, Sentence.Of("sheet/unknown-reference.help.roll"))
            );
        }
    }

    static void CheckConsignments(Production production, FindingList findings)
    {
        // If a name is there twice, one of the two is a slip for the name we miss.
        var known = production.Rolls.Select(r => r.Name.Value).ToHashSet(StringComparer.Ordinal);
        if (known.Count < production.Rolls.Length || production.Unread.Contains(Part.Rolls))
        {
            return;
        }

        foreach (var roll in (production.Lab?.Consignments ?? []).SelectMany(c => c.Rolls).Where(r => !known.Contains(r.Value)))
        {
            findings.Add(
                SheetChecks.UnknownReference,
                Sentence.Of("sheet/unknown-reference.message.consignment", ("name", Quote.Short(roll.Value))),
                roll.Place,
                Help(roll.Value, known, Sentence.Of("sheet/unknown-reference.help.roll"))
            );
        }
    }

    static Sentence Help(string written, IEnumerable<string> known, Sentence otherwise) =>
        Likeness.Nearest(written, known) is { } nearest ? Sentence.Of("common.did-you-mean", ("near", nearest)) : otherwise;
}
