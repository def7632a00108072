using Spoolbook.Film.Exposures;

namespace Spoolbook.Film.Tests;

/// <summary>What cannot come from a person's pen is a programmer's mistake, and has a message.</summary>
public class ProgrammersMistakeTests
{
    [Fact]
    public void What_was_never_read_has_no_value_and_no_slip()
    {
        Assert.False(default(Parsed<Speed, SpeedFault>).Succeeded);
        Assert.Null(default(Parsed<Speed, SpeedFault>).Slip);
        Describe("There is no value: nothing was read", () => default(Parsed<Speed, SpeedFault>).Value);
    }

    [Fact]
    public void A_programmers_mistake_has_a_message()
    {
        Describe("A speed is above 0 frames a second.", () => new Speed(0));
        Describe("A shutter opens more than 0 and at most 360 degrees.", () => new Shutter(0));
        Describe("An exposure lasts longer than nothing.", () => new ExposureTime(0));
        Describe("A finder takes from none to less than all of the light.", () => default(ExposureTime).Adapted(1));
        Describe("The part of a shutter that is open is from 0 to 1.", () => ShutterOpening.ByOpening("wide", 2));
        Describe("A length that is written down is not negative.", () => FilmLength.OfFrames(-1));
        Describe("A running time is not negative.", () => RunningTime.Text(-1, 0));
        Describe("A ratio cannot have a denominator of zero.", () => new Ratio(1, 0));
        Describe("A reciprocity table has rising times above 0, and corrections of 0 or more.", () => new ReciprocityTable());
        Describe("There is no value: NoUnit", () => FilmLength.Parse("31").Value);
    }

    static void Describe(string words, Func<object> mistake) =>
        Assert.Contains(words, Assert.ThrowsAny<Exception>(mistake).Message, StringComparison.Ordinal);
}
