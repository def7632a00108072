using Spoolbook.Reading.Forms;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Reading.Keys;

static class ConsignmentKeys
{
    public static readonly ValueKey<DateOnly> Sent = new(
        "sent",
        TimeForms.Date,
        "The day on which it went; left out while it is only planned."
    )
    {
        Example = "2026-10-06",
    };
    public static readonly ValuesKey<string> Rolls = new("rolls", WordForms.Text, "The rolls in it.")
    {
        Required = true,
        Example = "[R01, R02]",
    };
    public static readonly ValueKey<string> How = new("how", WordForms.Text, "How it goes, and with whom.") { Example = "Night courier" };
    public static readonly ValueKey<int> Boxes = new(
        "boxes",
        NumberForms.FromOne,
        "Boxes that it takes; one unless written. Shipping is paid for each."
    )
    {
        Example = "2",
    };
    public static readonly ValueKey<string> Receipt = new(
        "receipt",
        WordForms.Text,
        "What the carrier or the lab gave for it: the waybill's number, who signed."
    )
    {
        Example = "Waybill 77-0142",
    };

    public static readonly KeyTable Table = new(Sentence.Of("common.owner.consignment"), [Sent, Rolls, How, Boxes, Receipt]);
}
