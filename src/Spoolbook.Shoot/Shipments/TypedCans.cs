using System.Collections.Immutable;
using System.Globalization;

namespace Spoolbook.Shoot.Shipments;

/// <summary>Finds the can that a person typed or a hand-held reader read: <c>HERON/R03/2</c>, with any signs between its parts.</summary>
public static class TypedCans
{
    /// <summary>
    /// The cans that a text can mean: by the whole code, which a reader types with whatever its keyboard has in place of the slashes;
    /// else by the code without its check character; else by the number in the packing order.
    /// </summary>
    /// <returns>Each with its record; none, one or several.</returns>
    public static ImmutableArray<(ShipmentRecord Record, ShippedCan Can)> Find(string typed, IReadOnlyList<ShipmentRecord> records)
    {
        var all = records.SelectMany(r => r.Cans.Select(c => (Record: r, Can: c))).ToList();
        var plain = LabNames.Plain(typed);
        return plain.Length == 0 ? []
            : Of(c => string.Equals(c.Code, typed.Trim(), StringComparison.OrdinalIgnoreCase)) is { IsEmpty: false } exact ? exact
            : Of(c => LabNames.Plain(c.Code) == plain) is { IsEmpty: false } whole ? whole
            : Of(c => Stem(c.Code) == plain) is { IsEmpty: false } stem ? stem
            : int.TryParse(plain, CultureInfo.InvariantCulture, out var number) ? Of(c => c.Number == number)
            : [];

        ImmutableArray<(ShipmentRecord, ShippedCan)> Of(Func<ShippedCan, bool> isMeant) => [.. all.Where(a => isMeant(a.Can))];
    }

    /// <summary>The can of that production and roll with another check character: a letter was misread. Null where there is none.</summary>
    public static ShippedCan? Misread(string typed, IReadOnlyList<ShipmentRecord> records)
    {
        var plain = LabNames.Plain(typed);
        return plain.Length < 2 ? null : records.SelectMany(r => r.Cans).FirstOrDefault(c => Stem(c.Code) == plain[..^1]);
    }

    // A record is a file, and a hand can write a code into it that has neither letter nor digit.
    static string Stem(string code) => LabNames.Plain(code) is { Length: > 0 } plain ? plain[..^1] : "";
}
