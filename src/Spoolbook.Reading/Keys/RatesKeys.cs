using Spoolbook.Reading.Forms;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Keys;

/// <summary>The keys of the lab's prices.</summary>
static class RatesKeys
{
    public static readonly ValueKey<string> Currency = new("currency", WordForms.Text, "The currency's code.")
    {
        Required = true,
        Example = "EUR",
    };
    public static readonly MapsKey Process = new("process", ProcessRateKeys.Table, "Prices of processing.")
    {
        Example = "[{process: ecn-2, foot: 0.32, minimum: 25}]",
    };
    public static readonly ValueKey<MinimumPer> MinimumPer = new(
        "minimum-per",
        WordForms.MinimumPer,
        "What the lab charges its minimum for; a roll unless written."
    )
    {
        Example = "order",
    };
    public static readonly ValueKey<PushRate> PushStop = new(
        "push-stop",
        NumberForms.PushRate,
        "Surcharge for a roll pushed or pulled, for each stop or part of one: an amount, or a part of its process."
    )
    {
        Example = "12",
    };
    public static readonly ValueKey<decimal> PrepRoll = new("prep-roll", NumberForms.Money, "Preparing one roll.") { Example = "8" };
    public static readonly ValueKey<decimal> ScanFoot = new("scan-foot", NumberForms.Money, "Scanning a foot.") { Example = "0.45" };
    public static readonly ValueKey<decimal> ScanMetre = new("scan-metre", NumberForms.Money, "Scanning a metre; instead of `scan-foot`.")
    {
        Example = "1.48",
    };
    public static readonly ValueKey<decimal> ScanHour = new(
        "scan-hour",
        NumberForms.Money,
        "Scanning an hour of film, as it runs at the projection speed; instead of `scan-foot`."
    )
    {
        Example = "320",
    };
    public static readonly ValueKey<decimal> WorkprintFoot = new("workprint-foot", NumberForms.Money, "A workprint, a foot.")
    {
        Example = "0.60",
    };
    public static readonly ValueKey<decimal> WorkprintMetre = new(
        "workprint-metre",
        NumberForms.Money,
        "A workprint, a metre; instead of `workprint-foot`."
    )
    {
        Example = "1.97",
    };
    public static readonly ValueKey<decimal> Shipping = new("shipping", NumberForms.Money, "Sending one box.") { Example = "18" };
    public static readonly ValueKey<decimal> Tax = new("tax", NumberForms.Tax, "The rate of tax.") { Example = "19%" };

    public static readonly KeyTable Table = new(
        Sentence.Of("common.owner.rates"),
        [Currency, Process, MinimumPer, PushStop, PrepRoll, ScanFoot, ScanMetre, ScanHour, WorkprintFoot, WorkprintMetre, Shipping, Tax]
    )
    {
        NotBoth = [(ScanFoot, ScanMetre), (WorkprintFoot, WorkprintMetre)],
    };
}
