using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Xml.Linq;
using Spoolbook.Reading.Files;

namespace Spoolbook.Entry.Tests;

/// <summary>Tables that cannot be imported, or only with care. Each is refused with an address and advice.</summary>
public class HostileTableTests
{
    static readonly XNamespace _main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

    static readonly ShootInMemory _sample = new(new FolderFiles(Repository.Sample));

    [Theory]
    [InlineData("Body", "B2", "was shot with 'B1'")]
    [InlineData("Stop", "5.7/9", "5.7/9")]
    [InlineData("Speed", "fast", "fast")]
    [InlineData("Mark", "OK", "'OK' is no mark")]
    [InlineData("Day", "4/10/2026", "no day of the calendar")]
    [InlineData("To frame", 939.5, "frames are whole")]
    [InlineData("To frame", -1, "no length of film")]
    [InlineData("Take", 0, "no number of a take")]
    [InlineData("Roll", "R9", "no roll 'R9'")]
    [InlineData("Scene", null, "no Scene")]
    public void What_cannot_be_is_refused_at_the_address_of_its_cell(string head, object? typed, string says)
    {
        var book = new TakesBook(_sample.Workbook);
        var address = book.Address("R02 2A/4", head);

        var plan = _sample.Import(book.Type("R02 2A/4", head, typed).Saved());

        var refused = Assert.Single(plan.Refused);
        Assert.Equal(address, refused.Where);
        Assert.Contains(says, refused.Message, StringComparison.Ordinal);
        Assert.NotEmpty(refused.Help);
        Assert.Empty(plan.Files);
    }

    [Fact]
    public void A_pass_that_the_log_has_no_rewind_for_is_refused()
    {
        var book = new TakesBook(_sample.Workbook);
        var plan = _sample.Import(book.Type("R02 2A/4", "Pass", 2).Saved());

        Assert.Equal(book.Address("R02 2A/4", "Pass"), Assert.Single(plan.Against(_sample.After(plan))).Where);
    }

    [Fact]
    public void Cells_of_one_row_that_disagree_are_refused()
    {
        var plan = _sample.Import(new TakesBook(_sample.Workbook).Type("R01 1A/2", "To frame", 735).Type("R01 1A/2", "Length", 11).Saved());

        Assert.Contains("disagrees with the other cells", Assert.Single(plan.Refused).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_split_stop_that_the_spreadsheet_took_for_a_date_is_refused_as_a_date()
    {
        // 8/11 typed into a cell that is not text: the 8th of November, in the format of the column of days.
        var book = new TakesBook(_sample.Workbook).Change(sheet =>
        {
            var day = sheet.Descendants(_main + "c").Single(c => c.Attribute("r")!.Value == "B8");
            var stop = sheet.Descendants(_main + "c").Single(c => c.Attribute("r")!.Value == "N8");
            stop.SetAttributeValue("s", day.Attribute("s")!.Value);
            stop.SetAttributeValue("t", null);
            stop.ReplaceNodes(new XElement(_main + "v", 46334));
        });

        var refused = Assert.Single(_sample.Import(book.Saved()).Refused);

        Assert.Equal(
            ("Takes!N8", true),
            (refused.Where, refused.Message.Contains("This is a date, 2026-11-08", StringComparison.Ordinal))
        );
    }

    [Fact]
    public void A_day_is_read_as_a_date_as_a_number_and_as_words()
    {
        foreach (var day in (object[])["2026-10-03", 46298])
        {
            // The take itself, and the one after it, which must not move and is given its old day.
            var written = _sample.Difference(new TakesBook(_sample.Workbook).Type("R02 2B/3", "Day", day).Saved()).First(l => l[0] == '+');
            Assert.Contains("on: 2026-10-03", written, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_formula_where_one_types_is_read_by_what_it_came_to()
    {
        var book = new TakesBook(_sample.Workbook).Change(sheet => Formula(sheet, "S8", "T7", "734"));

        Assert.Empty(_sample.Import(book.Saved()).Refused);
        Assert.Empty(_sample.Import(book.Saved()).Files);
    }

    [Theory]
    [InlineData("#REF!", "e")]
    [InlineData(null, null)]
    public void A_formula_that_came_to_nothing_is_refused_where_one_types_and_passed_over_where_the_sheet_reckons(
        string? value,
        string? type
    )
    {
        var typed = new TakesBook(_sample.Workbook).Change(sheet => Formula(sheet, "F8", "X1", value, type));
        var reckoned = new TakesBook(_sample.Workbook).Change(sheet => Formula(sheet, "J8", "X1", value, type));

        Assert.Equal("Takes!F8", Assert.Single(_sample.Import(typed.Saved()).Refused).Where);
        Assert.Empty(_sample.Import(reckoned.Saved()).Refused);
    }

    [Fact]
    public void Merged_cells_are_refused()
    {
        var book = new TakesBook(_sample.Workbook).Change(sheet =>
            sheet
                .Element(_main + "sheetData")!
                .AddAfterSelf(new XElement(_main + "mergeCells", new XElement(_main + "mergeCell", new XAttribute("ref", "F7:F9"))))
        );

        Assert.Equal("Takes!F7:F9", Assert.Single(_sample.Import(book.Saved()).Refused).Where);
    }

    [Fact]
    public void A_cell_that_the_file_has_twice_is_refused_at_its_address()
    {
        var book = new TakesBook(_sample.Workbook).Change(sheet =>
        {
            var day = sheet.Descendants(_main + "c").Single(c => c.Attribute("r")!.Value == "B8");
            day.AddAfterSelf(new XElement(day));
        });

        Assert.Equal("Takes!B8", Assert.Single(_sample.Import(book.Saved()).Refused).Where);
    }

    [Fact]
    public void Rows_that_a_filter_hides_are_read_and_noted()
    {
        var book = new TakesBook(_sample.Workbook)
            .Type("R02 2A/4", "Mark", "G")
            .Change(sheet => sheet.Descendants(_main + "row").Skip(4).ToList().ForEach(r => r.SetAttributeValue("hidden", "1")));

        var plan = _sample.Import(book.Saved());

        Assert.Equal(1, plan.Changed);
        Assert.Contains(plan.Notes, n => n.Message.Contains("are hidden", StringComparison.Ordinal));
    }

    [Fact]
    public void A_doubled_head_is_refused_and_a_column_of_the_users_own_is_noted()
    {
        var doubled = new TakesBook(_sample.Workbook).Change(sheet => Words(sheet, "Y4", "Lens"));
        var own = new TakesBook(_sample.Workbook).Change(sheet => Words(sheet, "Y4", "Weather"));

        Assert.Equal("Takes!Y4", Assert.Single(_sample.Import(doubled.Saved()).Refused).Where);
        Assert.Contains(_sample.Import(own.Saved()).Notes, n =>
            n.Where == "Takes!Y4" && n.Message.Contains("'Weather' is not read", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Macros_are_not_looked_at() =>
        Assert.Empty(_sample.Import(new TakesBook(_sample.Workbook).With("xl/vbaProject.bin", [1, 2, 3]).Saved()).Refused);

    [Fact]
    public void A_sheet_copied_into_another_workbook_is_found_by_its_heads()
    {
        var book = new TakesBook(_sample.Workbook);
        book.With(
            "xl/workbook.xml",
            Encoding.UTF8.GetBytes(book.Text("xl/workbook.xml").Replace("\"Takes\"", "\"Sheet1\"", StringComparison.Ordinal))
        );

        Assert.Empty(_sample.Import(book.Saved()).Refused);
    }

    [Fact]
    public void What_is_no_workbook_is_refused_by_what_it_is()
    {
        Refused([0xD0, 0xCF, 0x11, 0xE0, 0xA1, 0xB1, 0x1A, 0xE1], "password");
        Refused(_sample.Workbook[..(_sample.Workbook.Length / 2)], "damaged");
        Refused(
            Zip(("mimetype", "application/vnd.oasis.opendocument.spreadsheet"u8.ToArray()), ("content.xml", "<x/>"u8.ToArray())),
            "OpenDocument"
        );
        Refused(Zip(("readme.txt", "hello"u8.ToArray())), "no workbook");
        Refused([1, 2, 0, 3], "zero bytes");
        Refused([0xFF, 0xFE, (byte)'R', 0], "heads");
        Refused([(byte)'R', 0xFC, (byte)','], "heads");
        Refused([], "heads");
    }

    [Fact]
    public void A_workbook_that_unpacks_without_end_is_refused()
    {
        var bomb = new TakesBook(_sample.Workbook);
        bomb.With(bomb.TakesPart(), [.. "<worksheet>"u8, .. Enumerable.Repeat((byte)' ', 85_000_000)]);

        Refused(bomb.Saved(), "unpacks to more than 80 MB");
    }

    [Fact]
    public void Entities_that_grow_are_not_followed()
    {
        var bomb = new TakesBook(_sample.Workbook);
        bomb.With(bomb.TakesPart(), "<!DOCTYPE x [<!ENTITY a \"aaaa\"><!ENTITY b \"&a;&a;&a;\">]><worksheet>&b;</worksheet>"u8.ToArray());

        Refused(bomb.Saved(), "is damaged");
    }

    [Fact]
    public void More_rows_than_anybody_shoots_are_refused()
    {
        var table = new StringBuilder("Roll,Scene,Take,Mark\n");
        for (var i = 1; i <= 20_001; i++)
        {
            table.Append(CultureInfo.InvariantCulture, $"R01,9,{i},NG\n");
        }

        Refused(Encoding.UTF8.GetBytes(table.ToString()), "More than 20000 rows");
    }

    [Fact]
    public void A_table_saved_in_Windows_1252_is_read_with_a_word_about_it()
    {
        byte[] table = [.. "Roll;Scene;Shot;Take;Remarks\nR05;6;A;1;Caf"u8, 0xE9, .. " "u8, 0x96, .. " cat\n"u8];

        var plan = _sample.Import(table, "takes.csv");

        Assert.Empty(plan.Refused);
        Assert.Contains("note: Café – cat}", Assert.Single(plan.Files).After, StringComparison.Ordinal);
        var note = plan.Notes.First();
        Assert.Equal(("takes.csv:2", "The table is read as Windows-1252, since it is not UTF-8."), (note.Where, note.Message));
        Assert.StartsWith("Look at the accents", note.Help, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_table_saved_in_UTF_16_is_read(bool bigEndian)
    {
        var encoding = new UnicodeEncoding(bigEndian, byteOrderMark: true);
        byte[] table = [.. encoding.GetPreamble(), .. encoding.GetBytes("Roll\tScene\tShot\tTake\tRemarks\r\nR05\t6\tA\t1\tCafé 🎬\r\n")];

        var plan = _sample.Import(table, "takes.txt");

        Assert.Empty(plan.Refused);
        Assert.Contains("Café 🎬", Assert.Single(plan.Files).After, StringComparison.Ordinal);
        Assert.DoesNotContain(plan.Notes, n => n.Message.Contains("1252", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("\u001b[2J", "U+001B, an escape character")]
    [InlineData("\u202e", "U+202E, a right-to-left override")]
    public void A_cell_with_a_character_that_no_text_may_hold_is_refused_at_its_address(string stray, string what)
    {
        var table = Encoding.UTF8.GetBytes($"Roll,Scene,Shot,Take,Remarks\nR05,6,A,1,Cat{stray}\n");

        var refused = Assert.Single(_sample.Import(table, "takes.csv").Refused);

        Assert.Equal("takes.csv:2:E", refused.Where);
        Assert.Contains($"holds {what}", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_cell_of_two_hundred_thousand_escapes_is_read_in_one_go()
    {
        var book = new TakesBook(_sample.Workbook);
        var escapes = string.Concat(Enumerable.Repeat("_x0041_", 200_000)) + "_x005F_x0041_ _x41_";

        var plan = _sample.Import(book.Change(sheet => Words(sheet, "Y8", escapes)).Saved());

        var read = plan
            .Refused.Select(r => r.Message)
            .Concat(plan.Files.Select(f => f.After ?? ""))
            .Concat(plan.Notes.Select(n => n.Message));
        Assert.DoesNotContain(read, text => text.Contains("_x0041_A", StringComparison.Ordinal));
    }

    static void Refused(byte[] table, string says)
    {
        var refused = Assert.Single(_sample.Import(table, "table").Refused);
        Assert.Contains(says, refused.Message, StringComparison.Ordinal);
        Assert.NotEmpty(refused.Help);
    }

    static void Formula(XElement sheet, string address, string formula, string? value, string? type = null)
    {
        var cell = sheet.Descendants(_main + "c").Single(c => c.Attribute("r")!.Value == address);
        cell.SetAttributeValue("t", type);
        cell.ReplaceNodes(new XElement(_main + "f", formula), value is null ? null : new XElement(_main + "v", value));
    }

    static void Words(XElement sheet, string address, string words)
    {
        var row = sheet
            .Descendants(_main + "row")
            .Single(r => "RTUVWXY".Contains(address[0], StringComparison.Ordinal) && r.Attribute("r")!.Value == address[1..]);
        row.Add(
            new XElement(
                _main + "c",
                new XAttribute("r", address),
                new XAttribute("t", "inlineStr"),
                new XElement(_main + "is", new XElement(_main + "t", words))
            )
        );
    }

    static byte[] Zip(params (string Name, byte[] Bytes)[] parts)
    {
        using var bytes = new MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var (name, part) in parts)
            {
                using var stream = zip.CreateEntry(name).Open();
                stream.Write(part);
            }
        }

        return bytes.ToArray();
    }
}
