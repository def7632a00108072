using System.Collections.Immutable;
using Spoolbook.Entry.Tables;
using Spoolbook.Entry.Takes;
using Spoolbook.Reading.Editing;
using Spoolbook.Shoot.Accounts;

namespace Spoolbook.Entry;

/// <summary>Imports a table of takes: from a file to changes of the roll files. Writes nothing.</summary>
public static class TakeImport
{
    /// <summary>The longest file that is read, in bytes.</summary>
    public const int MostBytes = Limits.MostBytes;

    /// <summary>What importing a file would do.</summary>
    /// <param name="name">The file's name, for addresses.</param>
    /// <param name="book">The production as it is.</param>
    /// <param name="textOf">The text of one of the production's files; null where it cannot be read.</param>
    public static ImportPlan Plan(string name, byte[] bytes, TakeHeads heads, ShootBook book, Func<string, string?> textOf)
    {
        var objections = new Objections();
        var notes = new Objections();
        try
        {
            var table = TableFile.Read(name, bytes, heads, objections, notes);
            return Plan(table, heads, book, textOf, objections, notes);
        }
        catch (TableFault fault)
        {
            return new ImportPlan { Refused = [fault.Objection, .. objections.All], Notes = notes.All };
        }
    }

    static ImportPlan Plan(
        TakeTable table,
        TakeHeads heads,
        ShootBook book,
        Func<string, string?> textOf,
        Objections objections,
        Objections notes
    )
    {
        var parser = new RowParser(book.Production, heads, objections, notes);
        var rolls = new List<RollPlan>();
        foreach (var rows in table.Rows.Where(r => parser.HasSlate(r)).GroupBy(r => r.Roll))
        {
            if (Open(rows.Key, rows.First(), book, textOf, parser) is { } plan)
            {
                plan.Apply([.. rows]);
                rolls.Add(plan);
            }
        }

        Note(table, book, rolls, parser, notes);
        var files = objections.Count > 0 ? [] : Write(rolls, textOf, objections);
        return new ImportPlan
        {
            Files = objections.Count > 0 ? [] : files,
            Refused = objections.All,
            Notes = notes.All,
            New = rolls.Sum(r => r.New),
            Changed = rolls.Sum(r => r.Changed),
            Same = rolls.Sum(r => r.Same),
            Outcomes = [.. rolls.SelectMany(r => r.Outcomes)],
            Heads = heads,
        };
    }

    static RollPlan? Open(string name, TakeRow row, ShootBook book, Func<string, string?> textOf, RowParser parser)
    {
        var named = book.Production.Rolls.Where(r => r.Name.Value == name).ToList();
        var kept = book.Rolls.FirstOrDefault(r => r.Roll.Name.Value == name);
        switch (named.Count)
        {
            case 0:
                parser.Refuse(
                    row,
                    TakeColumn.Roll,
                    $"The production has no roll '{name}'.",
                    $"Write one of {string.Join(", ", book.Production.Rolls.Take(12).Select(r => r.Name.Value))}; or begin the roll's "
                        + $"file with its load, and import again."
                );
                return null;
            case > 1:
                parser.Refuse(row, TakeColumn.Roll, $"Two rolls are called '{name}'.", "Give one of them another name in its file first.");
                return null;
        }

        var file = named[0].Place.File;
        var text = textOf(file) is { } written ? RollText.Open(file, written, named[0].Place) : null;
        if (kept is null || text is null)
        {
            parser.Refuse(
                row,
                TakeColumn.Roll,
                $"Roll '{name}' cannot be written into: {file} has errors.",
                "Mend them first: spoolbook check shows them."
            );
            return null;
        }

        return new RollPlan(kept, text, parser);
    }

    static ImmutableArray<ChangedFile> Write(List<RollPlan> rolls, Func<string, string?> textOf, Objections objections)
    {
        var files = ImmutableArray.CreateBuilder<ChangedFile>();
        foreach (var file in rolls.Where(r => r.Changes.Count > 0).GroupBy(r => r.Book.Roll.Place.File))
        {
            // From the end of the file, so that a change to one roll does not move the places of the rolls still to come.
            var before = textOf(file.Key)!;
            var after = before;
            foreach (var roll in file.OrderByDescending(r => (r.Book.Roll.Place.Line, r.Book.Roll.Place.Column)))
            {
                var edited = RollText.Open(file.Key, after, roll.Book.Roll.Place)!.Change(roll.Changes);
                if (edited.Fault is { } fault)
                {
                    objections.Add(fault.Place.ToString(), fault.Message, fault.Help);
                    break;
                }

                after = edited.Text!;
            }

            files.Add(new ChangedFile(file.Key, before, after));
        }

        return files.ToImmutable();
    }

    static void Note(TakeTable table, ShootBook book, List<RollPlan> rolls, RowParser parser, Objections notes)
    {
        foreach (var roll in rolls.Where(r => r.Missing.Length > 0))
        {
            notes.Add(
                table.Name,
                $"{roll.Book.Roll.Name.Value} has takes that are not in the table: {Some(roll.Missing)}.",
                "They stay as they are; to take one out, delete it in the roll's file."
            );
        }

        var absent = book.Counted.Select(r => r.Roll.Name.Value).Except(table.Rows.Select(r => r.Roll)).ToList();
        if (absent.Count > 0 && rolls.Count > 0)
        {
            notes.Add(table.Name, $"No take of {Some([.. absent])} is in the table.", "");
        }

        foreach (var head in table.Unread)
        {
            notes.Add(head.Address, $"The column '{head.Text}' is not read.", "");
        }

        if (table.Hidden > 0)
        {
            notes.Add(table.Name, $"{table.Hidden} of the rows are hidden, and were read with the others.", "");
        }

        parser.NoteEmpty();
    }

    static string Some(IReadOnlyList<string> names) =>
        string.Join(", ", names.Take(8)) + (names.Count > 8 ? $" and {names.Count - 8} more" : "");
}
