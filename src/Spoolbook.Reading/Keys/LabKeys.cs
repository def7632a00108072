using Spoolbook.Reading.Forms;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Reading.Keys;

static class LabKeys
{
    public static readonly ValueKey<string> Name = new("name", WordForms.Text, "Its name.") { Example = "Harbour Film Lab" };
    public static readonly ValuesKey<string> Address = new("address", WordForms.Text, "Its address, a line each.")
    {
        Example = "[3 Dock Road, Port Example]",
    };
    public static readonly ValuesKey<string> Contact = new("contact", WordForms.Text, "Whom to ask for, phone, e-mail: free lines.")
    {
        Example = "[intake desk]",
    };
    public static readonly ValuesKey<string> Processes = new("processes", WordForms.Text, "The processes that it runs, as it names them.")
    {
        Example = "[ecn-2, bw-reversal]",
    };
    public static readonly ValueKey<double> PushMost = new("push-most", FilmForms.Stops, "The farthest that it pushes or pulls, in stops.")
    {
        Example = "2",
    };
    public static readonly ValuesKey<string> Services = new(
        "services",
        WordForms.Text,
        "What is wanted for every roll unless the roll says otherwise."
    )
    {
        Example = "[prep, scan]",
    };
    public static readonly ValueKey<DateOnly> NeededBy = new("needed-by", TimeForms.Date, "When the result is needed.")
    {
        Example = "2026-10-20",
    };
    public static readonly ValueKey<int> Days = new(
        "days",
        NumberForms.FromOne,
        "Days from sending until the film is back, as the lab says."
    )
    {
        Example = "10",
    };
    public static readonly ValuesKey<DayOfWeek> TakesInOn = new(
        "takes-in-on",
        WordForms.Weekday,
        "The days of the week on which it takes film in."
    )
    {
        Example = "[tuesday, thursday]",
    };
    public static readonly ValuesKey<string> ReturnTo = new("return-to", WordForms.Text, "Where the film goes back, a line each.")
    {
        Example = "[Film department, Port Example]",
    };
    public static readonly ValuesKey<string> BillTo = new("bill-to", WordForms.Text, "Who pays, a line each.")
    {
        Example = "[Film department, Port Example]",
    };
    public static readonly ValuesKey<string> InDoubt = new(
        "in-doubt",
        WordForms.Text,
        "Whom the lab asks before it does anything that is not written here, a line each."
    )
    {
        Example = "[\"The camera assistant, 555-0100\"]",
    };
    public static readonly ValuesKey<string> Agreed = new("agreed", WordForms.Text, "What was promised on the phone: free lines.")
    {
        Example = "[rolls back within the week]",
    };
    public static readonly MapKey Deliver = new("deliver", DeliverKeys.Table, "What it is to deliver of the rolls that it scans.")
    {
        Example = "{raster: 2048x1536, bits: 10, log: yes, rate: 24}",
    };
    public static readonly MapsKey Consignments = new(
        "consignments",
        ConsignmentKeys.Table,
        "What went to it together, or is to go: an order is printed for each."
    )
    {
        Example = "[{sent: 2026-10-06, rolls: [R01, R02]}]",
    };

    public static readonly KeyTable Table = new(
        Sentence.Of("common.owner.lab"),
        [
            Name,
            Address,
            Contact,
            Processes,
            PushMost,
            Services,
            NeededBy,
            Days,
            TakesInOn,
            ReturnTo,
            BillTo,
            InDoubt,
            Agreed,
            Deliver,
            Consignments,
        ]
    );
}
