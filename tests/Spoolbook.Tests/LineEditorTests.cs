using Spoolbook.Asking;
using Spoolbook.Entry.Lines;
using Spoolbook.Reading;
using Spoolbook.Reading.Files;

namespace Spoolbook.Tests;

/// <summary>A line is typed, corrected and shown as the hands and the eyes expect it.</summary>
public sealed class LineEditorTests
{
    const string Left = "<",
        Right = ">",
        Home = "H",
        End = "E",
        Back = "B",
        Delete = "D",
        Up = "U",
        Down = "N",
        Tab = "T",
        Enter = "R";

    [Theory]
    [InlineData("1A/4 70 G", "1A/4 70 G", Enter)]
    [InlineData("1A/4 7 G", "1A/4 70 G", Left, Left, "0", Enter)]
    [InlineData("A/4", "1A/4", Home, "1", End, Enter)]
    [InlineData("A/4 70", "1A/4 70 G", Home, "1", End, " G", Enter)]
    [InlineData("1A/44", "1A/4", Back, Enter)]
    [InlineData("1A/4", "A/4", Home, Delete, Enter)]
    [InlineData("1A/4", "1A/4", Left, Left, Left, Left, Left, Back, End, Right, Delete, Enter)]
    // An accent that is typed for itself goes with its letter, and so do the halves of a sign beyond the first 65,536.
    [InlineData("cafe\u0301", "caf", Back, Enter)]
    [InlineData("cafe\u0301s", "cafs", Left, Back, Enter)]
    [InlineData("\U0001F3A5x", "x", Left, Back, Enter)]
    [InlineData("\u5149", "", Back, Enter)]
    public void Keys_change_the_line_where_the_cursor_is(string typed, string line, params string[] keys) =>
        Assert.Equal(line, Read([typed, .. keys]).Single());

    [Fact]
    public void Control_keys_do_what_they_do_in_a_shell()
    {
        Assert.Equal("note Clouds ", Read(["note Clouds came", Control('W'), Enter]).Single());
        Assert.Equal("70 G", Read(["1A/4 70 G", Left, Left, Left, Left, Control('U'), Enter]).Single());
        Assert.Equal("1A/4 ", Read(["1A/4 70 G", Left, Left, Left, Left, Control('K'), Enter]).Single());
        Assert.Equal("x1A/4y", Read(["1A/4", Control('A'), "x", Control('E'), "y", Enter]).Single());
    }

    [Fact]
    public void The_arrows_bring_back_the_lines_before_and_then_the_one_that_was_begun()
    {
        Assert.Equal(["wind", "1A/1 12 G", "wind"], Read(["wind", Enter, "1A/1 12 G", Enter, Up, Up, Enter]));
        Assert.Equal(["wind", "1A/1"], Read(["wind", Enter, "1A", Up, Down, "/1", Enter]));
        Assert.Equal(["wind", "wind", ""], Read(["wind", Enter, Up, Up, Up, Enter, Down, Enter]));
        // An empty line is none to come back to.
        Assert.Equal(["wind", "", "wind"], Read(["wind", Enter, Enter, Up, Enter]));
    }

    [Fact]
    public void Tab_completes_slates_and_names_and_goes_through_them_in_turn()
    {
        Assert.Equal("1A/4 ", Read(["1A", Tab, Enter]).Single());
        Assert.Equal("1A/4 10mm", Read(["1A/4 1", Tab, Back, Enter]).Single());
        Assert.Equal(
            ["ND3", "ND6", "N250-A/", "ND3"],
            Enumerable.Range(1, 4).Select(n => Read(["1A/4 N", .. Enumerable.Repeat(Tab, n), Enter]).Single()[5..])
        );
        Assert.Equal("1A/4 xyz", Read(["1A/4 xyz", Tab, Enter]).Single());
        Assert.Equal("rewind ", Read(["rew", Tab, Enter]).Single());
    }

    [Fact]
    public void Several_lines_that_are_pasted_are_read_one_after_the_other() =>
        Assert.Equal(["wind", "1A/4 70 G", "unload 16:45"], Read(["wind\n1A/4 70 G\r", "unload 16:45", Enter]));

    [Theory]
    [InlineData('C', "1A/4")]
    [InlineData('C', "")]
    [InlineData('D', "")]
    public void The_prompt_ends_without_taking_what_was_begun(char key, string begun) =>
        Assert.Empty(Read([begun, Control(key), "wind", Enter]));

    [Theory]
    [InlineData("1A/4", 20, "\r> 1A/4\u001b[K")]
    [InlineData("\u5149 70", 20, "\r> \u5149 70\u001b[K")]
    // What does not fit gives way before the cursor, by whole letters: two cells each here, or none for an accent.
    [InlineData("0123456789abcdef", 12, "\r> 789abcdef\u001b[K")]
    [InlineData("\u5149\u5149\u5149\u5149\u5149\u5149", 12, "\r> \u5149\u5149\u5149\u5149\u001b[K")]
    [InlineData(
        "e\u0301e\u0301e\u0301e\u0301e\u0301e\u0301e\u0301e\u0301e\u0301e\u0301",
        12,
        "\r> e\u0301e\u0301e\u0301e\u0301e\u0301e\u0301e\u0301e\u0301e\u0301\u001b[K"
    )]
    public void A_line_is_shown_around_its_end(string typed, int width, string shown) => Assert.Equal(shown, Shown([typed], width));

    [Theory]
    [InlineData("1A/4", "\r> 1A/4\u001b[K\u001b[1D")]
    [InlineData("7\u5149", "\r> 7\u5149\u001b[K\u001b[2D")]
    [InlineData("cafe\u0301", "\r> cafe\u0301\u001b[K\u001b[1D")]
    public void The_cursor_goes_back_by_the_room_that_a_letter_takes(string typed, string shown) =>
        Assert.Equal(shown, Shown([typed, Left], 40));

    static string Control(char key) => "^" + key;

    static readonly LineContext _context = LineContext.Of(
        ProductionReader
            .Read(
                TextFiles.OneFile(
                    """
                    spoolbook: 1
                    title: The Short Pier
                    code: PIER
                    lots: [{lot: N250-A, stock: Colour negative 250 D, ei: 250, process: ecn-2, length: 100ft, units: 4}]
                    lenses: [{lens: 10mm, focal: 10}, {lens: 25mm, focal: 25}]
                    filters: [{filter: ND3, stops: 1}, {filter: ND6, stops: 2}]
                    rolls:
                      - roll: R03
                        lot: N250-A
                        unit: 1
                        load: {on: 2026-10-03 09:15}
                        log:
                          - take: {scene: 1, shot: A, take: 3, to: 14+10, speed: 24, mark: good}
                    """
                )
            )
            .Production!,
        new DateOnly(2026, 10, 4)
    );

    // The lines that come out until the keys are used up or the prompt ends.
    static List<string> Read(IEnumerable<string> typed)
    {
        var keys = new Queue<ConsoleKeyInfo>(typed.SelectMany(Keys));
        using var output = new StringWriter();
        var editor = new LineEditor(keys.Dequeue, output, 80);
        var lines = new List<string>();
        while (keys.Count > 0 && editor.Read("> ", () => _context) is { } line)
        {
            lines.Add(line);
        }

        return lines;
    }

    // What the terminal got last before the return key.
    static string Shown(IEnumerable<string> typed, int width)
    {
        using var output = new StringWriter { NewLine = "\n" };
        var keys = new Queue<ConsoleKeyInfo>(typed.Append(Enter).SelectMany(Keys));
        new LineEditor(keys.Dequeue, output, width).Read("> ", () => null);
        return output.ToString()[output.ToString().LastIndexOf('\r')..].TrimEnd('\n');
    }

    static IEnumerable<ConsoleKeyInfo> Keys(string typed) =>
        typed switch
        {
            Left => [Named(ConsoleKey.LeftArrow)],
            Right => [Named(ConsoleKey.RightArrow)],
            Home => [Named(ConsoleKey.Home)],
            End => [Named(ConsoleKey.End)],
            Back => [Named(ConsoleKey.Backspace)],
            Delete => [Named(ConsoleKey.Delete)],
            Up => [Named(ConsoleKey.UpArrow)],
            Down => [Named(ConsoleKey.DownArrow)],
            Tab => [Named(ConsoleKey.Tab)],
            Enter => [Named(ConsoleKey.Enter)],
            ['^', var key] => [new ConsoleKeyInfo((char)(key - '@'), Enum.Parse<ConsoleKey>(key.ToString()), false, false, true)],
            _ => typed.Select(c => new ConsoleKeyInfo(c, c == '\r' ? ConsoleKey.Enter : default, false, false, false)),
        };

    static ConsoleKeyInfo Named(ConsoleKey key) => new('\0', key, false, false, false);
}
