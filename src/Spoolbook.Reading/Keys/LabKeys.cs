using Spoolbook.Reading.Forms;

namespace Spoolbook.Reading.Keys;

/// <summary>The keys of the lab.</summary>
static class LabKeys
{
    public static readonly ValueKey<string> Name = new("name", WordForms.Text, "Its name.") { Example = "Harbour Film Lab" };
    public static readonly ValuesKey<string> Address = new("address", WordForms.Text, "Its address, a line each.") { Example = "[3 Dock Road, Port Example]" };
    public static readonly ValuesKey<string> Contact = new("contact", WordForms.Text, "Whom to ask for, telephone, e-mail: free lines.") { Example = "[intake desk]" };
    public static readonly ValuesKey<string> Processes = new("processes", WordForms.Text, "The processes that it runs, as it names them.") { Example = "[ecn-2, bw-reversal]" };
    public static readonly ValueKey<double> PushMost = new("push-most", FilmForms.Stops, "The farthest that it pushes or pulls, in stops.") { Example = "2" };
    public static readonly ValuesKey<string> Services = new("services", WordForms.Text, "What is wanted for every roll unless the roll says otherwise.") { Example = "[prep, scan]" };
    public static readonly ValueKey<DateOnly> NeededBy = new("needed-by", TimeForms.Date, "When the result is needed.") { Example = "2026-10-20" };
    public static readonly ValuesKey<string> ReturnTo = new("return-to", WordForms.Text, "Where the film goes back, a line each.") { Example = "[Film department, Port Example]" };
    public static readonly ValuesKey<string> BillTo = new("bill-to", WordForms.Text, "Who pays, a line each.") { Example = "[Film department, Port Example]" };
    public static readonly ValuesKey<string> InDoubt = new("in-doubt", WordForms.Text, "Whom the lab asks before it does anything that is not written here, a line each.") { Example = "[\"The camera assistant, 555-0100\"]" };
    public static readonly ValuesKey<string> Agreed = new("agreed", WordForms.Text, "What was promised on the telephone: free lines.") { Example = "[rolls back within the week]" };
    public static readonly MapsKey Consignments = new("consignments", ConsignmentKeys.Table, "What went to it together, or is to go: an order is printed for each.") { Example = "[{sent: 2026-10-06, rolls: [R01, R02]}]" };

    public static readonly KeyTable Table = new("the lab", [Name, Address, Contact, Processes, PushMost, Services, NeededBy, ReturnTo, BillTo, InDoubt, Agreed, Consignments]);
}

/// <summary>The keys of a consignment.</summary>
static class ConsignmentKeys
{
    public static readonly ValueKey<DateOnly> Sent = new("sent", TimeForms.Date, "The day on which it went; left out while it is only planned.") { Example = "2026-10-06" };
    public static readonly ValuesKey<string> Rolls = new("rolls", WordForms.Text, "The rolls in it.") { Required = true, Example = "[R01, R02]" };
    public static readonly ValueKey<string> How = new("how", WordForms.Text, "How it goes, and with whom.") { Example = "Night courier" };
    public static readonly ValueKey<int> Boxes = new("boxes", NumberForms.FromOne, "Boxes that it takes; one unless written. Shipping is paid for each.") { Example = "2" };
    public static readonly ValueKey<string> Receipt = new("receipt", WordForms.Text, "What the carrier or the lab gave for it: the waybill's number, who signed.") { Example = "Waybill 77-0142" };

    public static readonly KeyTable Table = new("a consignment", [Sent, Rolls, How, Boxes, Receipt]);
}

/// <summary>The keys of the rates.</summary>
static class RatesKeys
{
    public static readonly ValueKey<string> Currency = new("currency", WordForms.Text, "The currency's code.") { Required = true, Example = "EUR" };
    public static readonly MapsKey Process = new("process", ProcessRateKeys.Table, "Prices of processing.") { Example = "[{process: ecn-2, foot: 0.32, minimum: 25}]" };
    public static readonly ValueKey<decimal> PushStop = new("push-stop", NumberForms.Money, "Surcharge for a roll pushed or pulled, for each stop or part of one.") { Example = "12" };
    public static readonly ValueKey<decimal> PrepRoll = new("prep-roll", NumberForms.Money, "Preparing one roll.") { Example = "8" };
    public static readonly ValueKey<decimal> ScanFoot = new("scan-foot", NumberForms.Money, "Scanning a foot.") { Example = "0.45" };
    public static readonly ValueKey<decimal> ScanMetre = new("scan-metre", NumberForms.Money, "Scanning a metre; instead of `scan-foot`.") { Example = "1.48" };
    public static readonly ValueKey<decimal> ScanHour = new("scan-hour", NumberForms.Money, "Scanning an hour of film, as it runs at the projection speed; instead of `scan-foot`.") { Example = "320" };
    public static readonly ValueKey<decimal> WorkprintFoot = new("workprint-foot", NumberForms.Money, "A workprint, a foot.") { Example = "0.60" };
    public static readonly ValueKey<decimal> WorkprintMetre = new("workprint-metre", NumberForms.Money, "A workprint, a metre; instead of `workprint-foot`.") { Example = "1.97" };
    public static readonly ValueKey<decimal> Shipping = new("shipping", NumberForms.Money, "Sending one box.") { Example = "18" };
    public static readonly ValueKey<decimal> Tax = new("tax", NumberForms.Tax, "The rate of tax.") { Example = "19%" };

    public static readonly KeyTable Table = new("the list of rates", [Currency, Process, PushStop, PrepRoll, ScanFoot, ScanMetre, ScanHour, WorkprintFoot, WorkprintMetre, Shipping, Tax])
    {
        NotBoth = [(ScanFoot, ScanMetre), (WorkprintFoot, WorkprintMetre)],
    };
}

/// <summary>The keys of the price of one process.</summary>
static class ProcessRateKeys
{
    public static readonly ValueKey<string> Process = new("process", WordForms.Text, "The process.") { Required = true, Example = "ecn-2" };
    public static readonly ValueKey<decimal> Foot = new("foot", NumberForms.Money, "Price of a foot.") { Example = "0.32" };
    public static readonly ValueKey<decimal> Metre = new("metre", NumberForms.Money, "Price of a metre; instead of `foot`.") { Example = "1.05" };
    public static readonly ValueKey<decimal> Minimum = new("minimum", NumberForms.Money, "The least that a roll is charged.") { Example = "25" };

    public static readonly KeyTable Table = new("the rate of a process", [Process, Foot, Metre, Minimum])
    {
        Either = [Foot, Metre],
    };
}
