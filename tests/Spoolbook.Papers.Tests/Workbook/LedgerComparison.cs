using System.Globalization;
using System.Text.Json;
using Spoolbook.Papers.Ledger;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.Tests.Workbook;

/// <summary>Compares the cells of a workbook with the ledger, table by table.</summary>
sealed class LedgerComparison(XlsxReader workbook, JsonElement ledger, LedgerSource source)
{
    static readonly (string Head, string Key)[] Accounts =
    [
        ("Good", "good"),
        ("Hold", "hold"),
        ("No good", "no-good"),
        ("Waste", "waste"),
        ("Exposed", "exposed"),
    ];

    static readonly string[] Causes = ["head", "tail", "gap", "run-off", "fog", "test", "end"];

    // A foot of 0.3048 m, computed here and not by the workbook.
    readonly double _framesPerUnit =
        source.Shoot.Production.Units == LengthUnit.Metres
            ? source.Shoot.Production.Gauge.FramesPerFoot.ToDouble() / 0.3048
            : source.Shoot.Production.Gauge.FramesPerFoot.ToDouble();

    public void Run()
    {
        Table("Rolls", ledger.GetProperty("rolls"), Roll);
        Table("Takes", ledger.GetProperty("rolls").EnumerateArray().SelectMany(r => r.GetProperty("takes").EnumerateArray()), Take);
        Table("Days", ledger.GetProperty("days"), Day);
        Table("Scenes", ledger.GetProperty("scenes"), (row, scene) => Use(row, scene.GetProperty("use")));
        Table("Lots", ledger.GetProperty("lots"), (row, lot) => Use(row, lot.GetProperty("use")));
        Table("Bodies", ledger.GetProperty("bodies"), (row, body) => Use(row, body.GetProperty("use")));
        Table("Stock", ledger.GetProperty("stock").GetProperty("lots"), Lot);
        Table("StockLog", ledger.GetProperty("stock").GetProperty("log"), (row, move) =>
        {
            Assert.Equal(move.GetProperty("what").GetString(), row.Text("What"));
            Assert.Equal(FramesOf(move, "change"), row.Frames("Change"));
        });
        Table("Cost", ledger.GetProperty("cost").GetProperty("lines"), Line);
        Table("Film", ledger.GetProperty("rolls").EnumerateArray().SelectMany(r => r.GetProperty("film").EnumerateArray()), (row, film) =>
            Assert.Equal(
                film.GetProperty("to").GetProperty("frames").GetInt64() - film.GetProperty("from").GetProperty("frames").GetInt64(),
                row.Frames("Frames")
            )
        );
        var forecast = ledger.GetProperty("forecast");
        Table("Forecast", forecast.GetProperty("days"), ForecastDay);
        Table("Shots", AsListed(forecast), Shot);
        Summary();
        Forecast(forecast);
    }

    void Table(string sheet, JsonElement of, Action<Row, JsonElement> compare) => Table(sheet, of.EnumerateArray(), compare);

    void Table<T>(string sheet, IEnumerable<T> of, Action<Row, T> compare)
    {
        var things = of.ToList();
        var rows = workbook.Tables[sheet].Rows().ToList();
        Assert.Equal(Math.Max(1, things.Count), rows.Count);
        foreach (var (thing, row) in things.Zip(rows))
        {
            compare(new Row(workbook.Tables[sheet], row, _framesPerUnit), thing);
        }
    }

    static void Roll(Row row, JsonElement roll)
    {
        Assert.Equal(roll.GetProperty("roll").GetString(), row.Text("Roll"));
        Use(row, roll.GetProperty("use"));
        var film = roll.GetProperty("use").GetProperty("film");
        Assert.Equal(FramesOf(film, "loaded"), row.Length("Loaded"));
        Assert.Equal(FramesOf(film, "left-over"), row.Length("Left over"));
        Assert.Equal(roll.GetProperty("takes").GetArrayLength(), row.Number("Takes"));
    }

    static void Take(Row row, JsonElement take)
    {
        Assert.Equal(take.GetProperty("scene").GetString(), row.Text("Scene"));
        Assert.Equal(take.GetProperty("mark").GetString(), row.Text("Mark"));
        Assert.Equal(FramesOf(take, "from"), row.Length("From"));
        Assert.Equal(FramesOf(take, "to"), row.Length("To"));
        Assert.Equal(FramesOf(take, "length"), row.Length("Length"));
        Assert.Equal(take.GetProperty("screen-seconds").GetDouble(), row.Number("Screen time") * 86400, tolerance: 1e-6);
    }

    static void Day(Row row, JsonElement day)
    {
        Use(row, day.GetProperty("use"));
        Assert.Equal(FramesOf(day, "loaded"), row.Length("Loaded"));
        (string Head, string Key)[] lengths =
        [
            ("On hand", "on-hand"),
            ("In camera", "in-camera"),
            ("Left to shoot", "left"),
            ("Short ends made", "short-ends-made"),
            ("Came", "came"),
            ("Went", "went"),
        ];
        Assert.All(lengths, l => Assert.Equal((l.Head, FramesOf(day, l.Key)), (l.Head, row.Length(l.Head))));
        Assert.Equal(FramesOf(day.GetProperty("to-date"), "exposed"), row.Length("Exposed to date"));
        Assert.Equal(FramesOf(day.GetProperty("to-date"), "good"), row.Length("Good to date"));
        foreach (var cause in Causes)
        {
            var head = char.ToUpperInvariant(cause[0]) + cause[1..].Replace('-', ' ');
            Assert.Equal(FramesOf(day.GetProperty("use").GetProperty("film").GetProperty("waste-by"), cause), row.Length(head));
        }
    }

    static void Use(Row row, JsonElement use)
    {
        foreach (var (head, key) in Accounts)
        {
            Assert.Equal(FramesOf(use.GetProperty("film"), key), row.Length(head));
        }

        Assert.Equal(use.GetProperty("screen-seconds").GetDouble(), row.Number("Screen time") * 86400, tolerance: 1e-6);
        row.Ratio("Exposed to good", use.GetProperty("exposed-to-good"));
        row.Ratio("Waste rate", use.GetProperty("waste-rate"));
    }

    static void Lot(Row row, JsonElement lot)
    {
        Assert.Equal(lot.GetProperty("units").GetProperty("unopened").GetInt32(), row.Number("Sealed"));
        (string Head, string Key)[] units =
        [
            ("Units", "received"),
            ("Came", "came"),
            ("Sent", "sent-away"),
            ("Lost", "lost"),
            ("Shot", "loaded"),
            ("Practised", "practised"),
        ];
        foreach (var (head, key) in units)
        {
            Assert.Equal((head, lot.GetProperty("units").GetProperty(key).GetInt32()), (head, row.Number(head)));
        }

        (string Head, string Key)[] lengths =
        [
            ("Came film", "came"),
            ("Sent film", "sent-away"),
            ("Lost film", "lost"),
            ("Received", "received"),
            ("Remeasured", "remeasured"),
            ("Sealed film", "unopened"),
            ("Exposed", "exposed"),
            ("Short ends", "short-ends"),
            ("In camera", "in-camera"),
            ("Practice", "practised"),
            ("On hand", "on-hand"),
            ("Left to shoot", "left"),
        ];
        foreach (var (head, key) in lengths)
        {
            Assert.Equal((head, FramesOf(lot, key)), (head, row.Length(head)));
        }
    }

    static void Line(Row row, JsonElement line)
    {
        Assert.Equal(line.GetProperty("what").GetString(), row.Text("What"));
        var amount = line.GetProperty("amount");
        Assert.Equal(
            amount.ValueKind == JsonValueKind.Null ? "open" : amount.GetRawText(),
            amount.ValueKind == JsonValueKind.Null ? row.Text("Amount") : row.Cents("Amount")
        );
        Assert.Equal(line.GetProperty("quantity").GetDouble(), row.Number("Quantity"), tolerance: 1e-6);
    }

    // Finished shots first, as in the ledger, which only counts the others.
    IEnumerable<JsonElement?> AsListed(JsonElement forecast)
    {
        var finished = forecast.GetProperty("finished-shots").EnumerateArray().Select(s => (JsonElement?)s).ToList();
        var left = source
            .Shoot.Production.Shots.Select(s => s.Name)
            .Except(finished.Select(s => s!.Value.GetProperty("shot").GetString()))
            .Distinct();
        return [.. finished, .. left.Select(_ => (JsonElement?)null)];
    }

    static void Shot(Row row, JsonElement? finished)
    {
        Assert.Equal(finished is null ? "left" : "got", row.Text("State"));
        if (finished is { } shot)
        {
            Assert.Equal(shot.GetProperty("shot").GetString(), row.Text("Shot"));
            Assert.Equal(FramesOf(shot, "film"), row.Length("Length"));
        }
    }

    static void ForecastDay(Row row, JsonElement day)
    {
        Assert.Equal(day.GetProperty("shots").GetInt32(), row.Number("Shots"));
        Assert.Equal(day.GetProperty("chance-it-lasts").GetDouble(), row.Number("Lasts"), tolerance: 1e-6);
        foreach (var needed in day.GetProperty("needed").EnumerateArray())
        {
            Assert.Equal(FramesOf(needed, "film"), row.Length($"Needed {needed.GetProperty("percent").GetInt32()}"));
        }
    }

    void Forecast(JsonElement forecast)
    {
        Assert.Equal(
            forecast.GetProperty("finished-shots").GetArrayLength(),
            double.Parse(Beside("Shots got"), CultureInfo.InvariantCulture)
        );
        Assert.Equal(
            forecast.GetProperty("shots-left") is { ValueKind: JsonValueKind.Number } left ? left.GetRawText() : "no list",
            Beside("Shots left")
        );
        Assert.Equal(
            forecast.GetProperty("loss-rate").GetDouble(),
            double.Parse(Beside("Loss rate"), CultureInfo.InvariantCulture),
            tolerance: 1e-6
        );
        Assert.Equal(FramesOf(forecast, "stock"), FramesBeside("Stock to shoot"));
        Assert.Equal(FramesOf(forecast, "too-short"), FramesBeside("Short ends of no use"));
        if (forecast.GetProperty("average-shot").ValueKind != JsonValueKind.Null)
        {
            Assert.Equal(FramesOf(forecast, "average-shot"), FramesBeside("An average shot"));
        }

        if (forecast.GetProperty("plain").ValueKind != JsonValueKind.Null)
        {
            Assert.Equal(FramesOf(forecast, "plain"), FramesBeside("Needed at the average"));
            Assert.Equal(FramesOf(forecast, "plain-lacking"), FramesBeside("Lacking at the average"));
        }

        foreach (var figure in forecast.GetProperty("figures").EnumerateArray())
        {
            var at = $" at {figure.GetProperty("percent").GetInt32()} %";
            Assert.Equal(FramesOf(figure, "needed"), FramesBeside("Needed" + at));
            Assert.Equal(FramesOf(figure, "lacking"), FramesBeside("Lacking" + at));
            Assert.Equal(figure.GetProperty("units-to-order").GetRawText(), Beside("Units to order" + at));
        }

        if (forecast.GetProperty("basis").GetString() == "drawn")
        {
            RunsOut(forecast.GetProperty("runs-out"));
        }
    }

    void RunsOut(JsonElement day)
    {
        var expected =
            day.ValueKind == JsonValueKind.Null ? "lasts"
            : day.GetProperty("on").GetString() is { } on
                ? DateTime.Parse(on, CultureInfo.InvariantCulture).ToOADate().ToString(CultureInfo.InvariantCulture)
            : day.GetProperty("ahead").GetRawText();
        Assert.Equal(expected, Beside("Runs out"));
    }

    string Beside(string label) => In("B", label);

    long FramesBeside(string label) => long.Parse(In("C", label), CultureInfo.InvariantCulture);

    string In(string column, string label)
    {
        var figures = workbook.Sheets["Figures"];
        return figures.Value(column + figures.Cells.First(c => c.Key.StartsWith('A') && c.Value.Value == label).Key[1..]);
    }

    void Summary()
    {
        var cost = ledger.GetProperty("cost");
        Assert.Equal("0", Beside("Frames unaccounted for"));
        Assert.Equal(FramesOf(ledger.GetProperty("total").GetProperty("film"), "exposed"), FramesBeside("Exposed"));
        Assert.Equal(FramesOf(ledger.GetProperty("stock"), "on-hand"), FramesBeside("On hand"));
        Assert.Equal(cost.GetProperty("ordered").GetRawText(), Row.ToCents(Beside("Ordered")));
        Assert.Equal(cost.GetProperty("total").GetRawText(), Row.ToCents(Beside("Total")));
        (string Label, string Key)[] toCome = [("Lab to come", "lab"), ("Stock to come", "stock"), ("At this rate to the end", "total")];
        foreach (var (label, key) in toCome)
        {
            var amount = cost.GetProperty("to-the-end").GetProperty(key);
            Assert.Equal(
                (label, amount.ValueKind == JsonValueKind.Null ? "open" : amount.GetRawText()),
                (label, amount.ValueKind == JsonValueKind.Null ? Beside(label) : Row.ToCents(Beside(label)))
            );
        }
    }

    static long FramesOf(JsonElement of, string key) => of.GetProperty(key).GetProperty("frames").GetInt64();
}
