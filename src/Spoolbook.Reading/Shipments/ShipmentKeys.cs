using Spoolbook.Reading.Forms;
using Spoolbook.Reading.Keys;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Shipments;

namespace Spoolbook.Reading.Shipments;

/// <summary>The keys of a consignment's record.</summary>
static class ShipmentKeys
{
    public static readonly ValueKey<string> Id = new("consignment", WordForms.Text, "Its name, and that of its folder.")
    {
        Required = true,
        Example = "2026-10-16-harbour-film-lab",
    };
    public static readonly ValueKey<string> Lab = new("lab", WordForms.Text, "The lab.") { Required = true, Example = "Harbour Film Lab" };
    public static readonly ValueKey<DateOnly> Sent = new("sent", TimeForms.Date, "The day on which it went.")
    {
        Required = true,
        Example = "2026-10-16",
    };
    public static readonly ValueKey<DateOnly> BackBy = new("back-by", TimeForms.Date, "The day by which all of it should be back.");
    public static readonly ValueKey<int> BoxHolds = new("box-holds", NumberForms.FromOne, "Cans that a box held.");
    public static readonly ValueKey<int> Count = new("count", NumberForms.FromZero, "How many cans went.");
    public static readonly ValueKey<string> Feet = new("feet", WordForms.Text, "Film in all of them.");

    public static readonly ValueKey<int> Number = new("n", NumberForms.FromOne, "Its place in the packing order.")
    {
        Required = true,
        Example = "1",
    };
    public static readonly ValueKey<int> Box = new("box", NumberForms.FromOne, "Its box.") { Required = true, Example = "1" };
    public static readonly ValueKey<string> Code = new("can", WordForms.Text, "The code on its label.")
    {
        Required = true,
        Example = "FERRY/R01/G",
    };
    public static readonly ValueKey<string> Production = new("production", WordForms.Text, "The production's folder.")
    {
        Required = true,
        Example = "ferry",
    };
    public static readonly ValueKey<string> Roll = new("roll", WordForms.Text, "The roll.") { Required = true, Example = "R01" };
    public static readonly ValueKey<string> Title = new("title", WordForms.Text, "The production's title.");
    public static readonly ValueKey<string> Process = new("process", WordForms.Text, "The process.");
    public static readonly ValueKey<double> Push = new("push", FilmForms.Stops, "Stops to push or pull.");
    public static readonly ValueKey<int> Frames = new("frames", NumberForms.FromZero, "Film in the can, in frames.");
    public static readonly ValueKey<string> Record = new("record", WordForms.Text, "The digest of the roll's file as it was sent.");

    public static readonly ValueKey<DateOnly> On = new("on", TimeForms.Date, "The day on which it came back.")
    {
        Required = true,
        Example = "2026-10-30",
    };
    public static readonly ValueKey<string> By = new("by", WordForms.Text, "Who took it in.");
    public static readonly ValueKey<CanState> State = new(
        "state",
        WordForms.Choice([.. States]),
        "How it came back; processed unless written."
    );
    public static readonly ValuesKey<string> Lights = new("lights", WordForms.Text, "Printer lights by slate: 7B/1 27-31-25.");
    public static readonly ValuesKey<string> Faults = new("faults", WordForms.Text, "What was found on the film, by footage.");

    public static readonly KeyTable Can = new(
        Sentence.Of("common.owner.shipped-can"),
        [Number, Box, Code, Production, Roll, Title, Process, Push, Frames, Record]
    );

    public static readonly KeyTable Return = new(Sentence.Of("common.owner.can-return"), [Code, On, By, State, Lights, Faults]);

    public static readonly MapsKey Cans = new("cans", Can, "The cans, in packing order.") { Required = true };
    public static readonly MapsKey Received = new("received", Return, "What came back, and when.");

    public static readonly KeyTable Table = new(
        Sentence.Of("common.owner.consignment"),
        [FileKeys.Version, Id, Lab, Sent, BackBy, BoxHolds, Count, Feet, Cans, Received]
    );

    /// <summary>How a can came back, as the record writes it.</summary>
    public static IReadOnlyList<(string Word, CanState Value)> States =>
        [("processed", CanState.Processed), ("unprocessed", CanState.Unprocessed), ("goes-on", CanState.GoesOn)];
}
