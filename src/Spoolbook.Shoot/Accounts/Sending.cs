using System.Collections.Immutable;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Accounts;

/// <summary>
/// A consignment as it is billed: the rolls ordered with it. Each roll that goes to the lab is in exactly one: the
/// first that names it, else the one of the day on which it went, else one that has not gone yet.
/// </summary>
/// <param name="Number">From 1, by the day of sending; one that has not gone yet comes last.</param>
/// <param name="SentOn">The day on which it went; null while it has not.</param>
/// <param name="Rolls">The rolls billed with it, in the production's order.</param>
public sealed record Sending(int Number, DateOnly? SentOn, ImmutableArray<RollBook> Rolls)
{
    /// <summary>Its record; null where only its rolls mention it.</summary>
    public Consignment? Written { get; init; }

    /// <summary>Rolls that it names but that are billed with an earlier one.</summary>
    public ImmutableArray<RollBook> Again { get; init; } = [];

    /// <summary>Boxes sent; one unless written.</summary>
    public int Boxes => Written?.Boxes?.Value ?? 1;

    /// <summary>The number of a can among its cans, from 1, as on its label and its line of the order.</summary>
    public int NumberOf(RollBook roll) => Rolls.IndexOf(roll) + 1;

    /// <summary>The consignments of a production.</summary>
    internal static ImmutableArray<Sending> Of(ShootBook book)
    {
        var left = book.Sent.ToList();
        var sendings = new List<Sending>();
        foreach (var written in (book.Production.Lab?.Consignments ?? []).OrderBy(c => c.SentOn?.Value ?? DateOnly.MaxValue))
        {
            var named = book.Sent.Where(r => written.Rolls.Any(n => n.Value == r.Roll.Name.Value)).ToList();
            sendings.Add(
                new Sending(0, written.SentOn?.Value, [.. named.Where(left.Contains)])
                {
                    Written = written,
                    Again = [.. named.Where(r => !left.Contains(r))],
                }
            );
            left.RemoveAll(named.Contains);
        }

        foreach (var day in left.GroupBy(r => r.Roll.Lab?.SentOn?.Value))
        {
            var same = day.Key is null ? -1 : sendings.FindIndex(s => s.SentOn == day.Key);
            if (same < 0)
            {
                sendings.Add(new Sending(0, day.Key, [.. day]));
            }
            else
            {
                var joined = sendings[same].Rolls.Concat(day);
                sendings[same] = sendings[same] with { Rolls = [.. book.Sent.Where(joined.Contains)] };
            }
        }

        // A consignment of rolls that are all still in a camera is not on an order yet.
        var billed =
            from sending in sendings
            where sending.SentOn is not null || !sending.Rolls.IsEmpty
            orderby sending.SentOn ?? DateOnly.MaxValue
            select sending;
        return [.. billed.Select((s, i) => s with { Number = i + 1 })];
    }
}
