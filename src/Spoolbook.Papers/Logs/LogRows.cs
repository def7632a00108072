using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Forecasts;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Papers.Logs;

/// <summary>A roll's log as lines of a report, in the order in which it happened.</summary>
internal static class LogRows
{
    // Characters of remarks that fit into two lines of their column; longer ones have a line of their own below.
    const int MostBeside = 40;

    // What a row has besides its columns' cells.
    static readonly ImmutableArray<KeyValuePair<string, object>> _besideColumns =
    [
        new("is_take", false),
        new("is_good", false),
        new("scene", ""),
        new("shot", ""),
        new("take", ""),
        new("pass", ""),
        new("event", ""),
        new("long_remarks", ""),
        new("anchor", ""),
    ];

    /// <summary>The name of a take's row, for links.</summary>
    public static string NameOf(Layer layer) => "take-" + PaperFormat.Number(layer.Index + 1);

    /// <summary>A line for each take, with its cells by the names of the columns, and one for whatever else happened.</summary>
    public static ImmutableArray<ImmutableSortedDictionary<string, object>> Of(
        RollBook roll,
        PaperFormat format,
        ImmutableArray<LogColumn> columns
    )
    {
        // A strip has a move for each entry of the log and a layer for each take of it, both in the log's order.
        var layers = roll.Layers.GetEnumerator();
        var rows = ImmutableArray.CreateBuilder<ImmutableSortedDictionary<string, object>>();
        var wound = false;
        var day = roll.Layers.Length > 0 ? roll.Layers[0].On : default;
        foreach (var move in roll.Strip.Moves)
        {
            if (!LogLines.IsLine(move.Entry))
            {
                // A line of its own for each winding would hide the takes: the next take has it.
                wound = true;
            }
            else if (move.Entry is Take && layers.MoveNext())
            {
                if (layers.Current.On != day)
                {
                    day = layers.Current.On;
                    rows.Add(Row(columns, _ => "").SetItem("event", format.Date(day)));
                }

                rows.Add(TakeRow(new TakeLine(layers.Current, wound, format) { Strip = roll.Strip }, roll, columns));
                wound = false;
            }
            else
            {
                rows.Add(EventRow(move, format, columns));
            }
        }

        return rows.DrainToImmutable();
    }

    /// <summary>Whether any take has remarks that a column of their own has room for.</summary>
    public static bool HasShortRemarks(RollBook roll, PaperFormat format) =>
        roll.Layers.Any(l =>
            new TakeLine(l, false, format) { Strip = roll.Strip }
                .Remarks
                .Length
                is > 0
                    and <= MostBeside
        );

    static ImmutableSortedDictionary<string, object> TakeRow(TakeLine line, RollBook roll, ImmutableArray<LogColumn> columns) =>
        Row(columns, column => column.Cell(line))
            .SetItem("is_take", true)
            .SetItem("is_good", line.Take.Mark.Value == Mark.Good)
            .SetItem("anchor", NameOf(line.Layer))
            .SetItem("scene", line.Take.Scene.Value)
            .SetItem("shot", line.Take.Shot?.Value ?? "")
            .SetItem("take", PaperFormat.Number(line.Take.Number.Value))
            .SetItem("long_remarks", line.Remarks.Length > (columns[^1].Name == "remarks" ? MostBeside : 0) ? line.Remarks : "")
            .SetItem("pass", roll.Strip.Passes > 1 ? PaperFormat.Number(line.Layer.Pass) : "");

    static ImmutableSortedDictionary<string, object> EventRow(Move move, PaperFormat format, ImmutableArray<LogColumn> columns)
    {
        var text = Event(move, format);
        return Row(columns, _ => "")
            .SetItem("from", format.Length(move.From))
            .SetItem("to", format.Length(move.To))
            .SetItem("event", move.Entry.Note is { Value.Length: > 0 } note && move.Entry is not Remark ? text + ": " + note.Value : text);
    }

    // A template goes through the cells, or names one as it names any fact: a column is one line, no member of a record besides.
    static ImmutableSortedDictionary<string, object> Row(ImmutableArray<LogColumn> columns, Func<LogColumn, string> cell) =>
        columns
            .Select(column => KeyValuePair.Create<string, object>(column.Name.Replace('-', '_'), cell(column)))
            .ToImmutableSortedDictionary(StringComparer.Ordinal)
            .AddRange(_besideColumns)
            .SetItem("cells", columns.Select(column => new LogCell(column.Name, cell(column))).ToImmutableArray());

    static string Event(Move move, PaperFormat format)
    {
        var words = format.Words;
        return move.Entry switch
        {
            Rewind rewind => words.Fill("event-rewind", ("to", format.Length(move.To)))
                + (rewind.InDark?.Value == true ? ", " + words["event-in-dark"] : "")
                + (rewind.ShutterClosed is { } closed ? ", " + words[closed.Value ? "event-shutter-closed" : "event-shutter-open"] : "")
                + (rewind.CounterZeroed?.Value == true ? ", " + words["event-counter-zeroed"] : ""),
            RunOff runOff => words.Fill("event-run-off", ("to", format.Length(move.To)))
                + (runOff.Capped is { } capped ? ", " + words[capped.Value ? "event-capped" : "event-not-capped"] : ""),
            Fog fog => words.Fill(
                "event-fog",
                ("at", format.Length(move.From)),
                ("before", format.LengthWithUnit(fog.Before.Value)),
                ("after", format.LengthWithUnit(fog.After.Value))
            ),
            Wind => words["event-wind"],
            Reload { ZeroMoved: { Value.Frames: < 0 } nearer } reload => words.Fill(
                "event-reload-back",
                ("body", InBody(reload, words)),
                ("zero", format.LengthWithUnit(Footage.Zero - nearer.Value))
            ),
            Reload reload => words.Fill(
                "event-reload",
                ("body", InBody(reload, words)),
                ("zero", format.LengthWithUnit(reload.ZeroMoved?.Value ?? Footage.Zero))
            ),
            _ => move.Entry.Note?.Value ?? "",
        };
    }

    static string InBody(Reload reload, Translations words) =>
        reload.Body is { } body ? " " + words.Fill("event-reload-body", ("body", body.Value)) : "";
}
