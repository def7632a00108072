using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Papers.Facts;
using Spoolbook.Papers.Jobs;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.LabOrders;

/// <summary>A lab order for each consignment.</summary>
internal sealed class LabOrderPaper : IPaper
{
    public IEnumerable<PaperJob> Jobs(PaperSource source)
    {
        var word = source.Words["lab-order"];
        var orders = Orders(source.Books.Cost);

        // A single consignment, the usual case, needs no number.
        return orders.Select(sending =>
            orders.Length > 1
                ? Job($"lab-order-{PaperFormat.Number(sending.Number)}", $"{word} {PaperFormat.Number(sending.Number)}", sending)
                : Job("lab-order", word, sending)
        );

        PaperJob Job(string name, string title, Sending sending) => new(name, "lab-order.html", title, _ => Of(sending, source));
    }

    /// <summary>The consignments to print an order for; an empty one where nothing goes, so that the paper says so.</summary>
    static ImmutableArray<Sending> Orders(CostBook cost) => cost.Sendings.IsEmpty ? [new Sending(1, null, [])] : cost.Sendings;

    static LabOrderFacts Of(Sending sending, PaperSource source)
    {
        var (book, cost, format) = (source.Shoot, source.Books.Cost, source.Format);
        var lab = book.Production.Lab;
        var sent = sending.Rolls.ToList();
        var exceptions = sent.Select(roll => Can(roll, sent, source)).Where(can => can.IsException).ToList();
        return new LabOrderFacts(source.Head)
        {
            HasLab = lab is not null,
            Lab = lab?.Name?.Value ?? format.Words["lab-open"],
            Address = Lines(lab?.Address),
            Contact = Lines(lab?.Contact),
            ReturnTo = Lines(lab?.ReturnTo),
            BillTo = Lines(lab?.BillTo),
            InDoubt = Lines(lab?.InDoubt),
            Gauge = book.Production.Gauge.Name,
            Agreed = Lines(lab?.Agreed),
            NeededBy = lab?.NeededBy is { } day ? format.Date(day.Value) : format.Words["not-stated"],
            // What costs most to miss first.
            Exceptions = [.. exceptions.OrderByDescending(can => can.Cost)],
            Kinds = ExceptionKind.Of(exceptions, format.Words),
            Routine = [.. Routine(sent, source)],
            OfCans = format.Words.Fill(
                "exceptions-of",
                ("n", PaperFormat.Number(exceptions.Count)),
                ("cans", format.Count(sent.Count, "can"))
            ),
            NotSent =
            [
                .. from roll in book.Rolls.Except(sent)
                group roll.Roll.Name.Value by Why(roll, sending, cost, format) into rolls
                select new KeptBack(string.Join(", ", rolls), rolls.Key),
            ],
            Cans = format.Count(sent.Count, "can"),
            Exposed = ExposedOn(sent, source.Books, format),
            ScanTakes = sent.Select(roll => RollPhrases.ToScan(roll, format)).FirstOrDefault(said => said.Length > 0) ?? "",
            LacksDeliver = source.Books.Delivery.IsMissing(sending),
            Deliver = DeliverFacts.Of(source.Books.Delivery, sending, format),
            Consignment =
                cost.Sendings.Length > 1
                    ? format.Words.Fill(
                        "consignment-of",
                        ("n", PaperFormat.Number(sending.Number)),
                        ("all", PaperFormat.Number(cost.Sendings.Length))
                    )
                    : "",
            SentOn = sending.SentOn is { } gone ? format.Date(gone) : format.Words["not-sent-yet"],
            How = sending.Written?.How?.Value ?? "",
            Receipt = sending.Written?.Receipt?.Value ?? "",
            Boxes = sending.Written?.Boxes is { } boxes ? format.Count(boxes.Value, "box") : "",
            NotFinal = NotFinal(sending, source.Books, format),
            LengthUnit = format.LengthUnitName,
            Cost = CostFacts.Of(cost.OrderOf(sending), source.Books, format),
        };
    }

    // A roll in a camera may go with the last box, unless it was loaded after that went. Practice goes nowhere.
    static string NotFinal(Sending sending, Books books, PaperFormat format)
    {
        var rolls =
            from book in books.Shoot.Rolls
            let roll = book.Roll
            where roll is { Unload: null, IsPractice: false }
            where sending.SentOn is not { } day || DateOnly.FromDateTime(roll.Load.On.Value) <= day
            select roll.Name.Value;
        var names = string.Join(", ", rolls);
        return names.Length > 0 && sending.Number == Orders(books.Cost)[^1].Number
            ? format.Words.Fill("order-not-final", ("rolls", names))
            : "";
    }

    static ImmutableArray<string> Lines(ImmutableArray<Located<string>>? lines) =>
        lines is { } written ? [.. written.Select(l => l.Value)] : [];

    static IEnumerable<OrderGroup> Routine(List<RollBook> sent, PaperSource source) =>
        from roll in sent
        let can = Can(roll, sent, source)
        where !can.IsException
        group (roll, can) by can.Process into same
        orderby same.Key
        select new OrderGroup(
            same.Key,
            source.Format.Count(same.Count(), "can"),
            ExposedOn([.. same.Select(s => s.roll)], source.Books, source.Format),
            [.. same.Select(s => s.can)]
        );

    static string ExposedOn(List<RollBook> rolls, Books books, PaperFormat format) =>
        format.AccountWithUnit(rolls.Aggregate(Footage.Zero, (sum, r) => sum + r.Tally.InCan), rolls.Sum(r => books.Metric.Of(r).InCan));

    static CanFacts Can(RollBook roll, List<RollBook> sent, PaperSource source) =>
        CanFacts.Of(roll, source.Books, source.Format, source.Waived, sent);

    static string Why(RollBook roll, Sending sending, CostBook cost, PaperFormat format) =>
        cost.SendingOf(roll) is not { } other
            ? Why(roll.Roll, format)
            : format.Words.Fill(
                sending.Again.Contains(roll) ? "kept-again"
                    : other.SentOn is null ? "kept-for-later"
                    : "kept-sent",
                ("n", PaperFormat.Number(other.Number)),
                ("day", other.SentOn is { } day ? format.Date(day) : "")
            );

    static string Why(Roll roll, PaperFormat format) =>
        roll.IsPractice ? format.Words["kept-practice"]
        : roll.Unload is null ? format.Words["kept-in-camera"]
        : roll is { IsUnshot: true, Lab.Send: null } or { IsUnshot: true, Lab: null } ? format.Words["kept-unshot"]
        : roll.Lab?.Notes is { } notes ? format.Words["kept-held"] + ": " + notes.Value
        : format.Words["kept-held"];
}
