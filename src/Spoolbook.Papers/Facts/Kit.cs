using System.Collections.Immutable;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.Facts;

/// <summary>Something lent with the kit.</summary>
/// <param name="Missing">Whether fewer came back than went out.</param>
public sealed record KitLine(string What, string Out, string Back, string Note, bool Missing)
{
    internal static ImmutableArray<KitLine> Of(Production production, Wording say) =>
    [
        .. production.Bodies.Select(b => Line(Words(b.Name.Value, b.What, b.Serial), b.Returned, say)),
        .. production.Lenses.Select(l => Line(Words(l.Name.Value, l.What, l.Serial), l.Returned, say)),
        .. production.Filters.Select(f => Line(Words(f.Name.Value, f.What, null), f.Returned, say)),
        .. production.Meters.Select(m => Line(Words(m.Name.Value, m.What, m.Serial), m.Returned, say)),
        .. production.Motors.Select(m => Line(Words(m.Name.Value, m.What, null), m.Returned, say)),
        .. production.Items.Select(i => Line(i.Name.Value, i.Returned, say)),
    ];

    static string Words(string name, Located<string>? what, Located<string>? serial) =>
        name + (what is null ? "" : ", " + what.Value) + (serial is null ? "" : " · " + serial.Value);

    static KitLine Line(string what, Returned returned, Wording say) => new(
        what,
        Wording.Number(returned.Out),
        returned.Back is { } back ? Wording.Number(back.Value) : say.Words["kit-still-out"],
        returned.Note?.Value ?? "",
        returned.Missing > 0);
}
