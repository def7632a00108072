using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Unicode;
using Spoolbook.Film;
using Spoolbook.Papers.Facts;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.PocketLogs;

/// <summary>
/// What the pocket log knows of the production, as JSON: the kit, the cans, the people, the shots, and where each roll in
/// a camera is. Lengths are whole frames on the strip.
/// </summary>
internal static class PocketData
{
    // The encoder that makes of < and & something that no page takes for its own markup.
    static readonly JsonWriterOptions _options = new() { Encoder = JavaScriptEncoder.Create(UnicodeRanges.All) };

    // What the script says beside its own words.
    static readonly string[] _sharedWords = ["unit_feet", "body"];

    // A lens of which the kit has no stops, and a body of which it has no speeds: common practice.
    static readonly (Stop Widest, Stop Smallest) _usualRing = (Stop.OfNumber(1.4), Stop.OfNumber(22));
    static readonly int[] _usualSpeeds = [16, 18, 24, 25, 48];

    public static string Write(Books books, PaperFormat format)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes, _options))
        {
            json.WriteStartObject();
            Head(json, books.Production, format);
            Kit(json, books.Production);
            Stock(json, books, format);
            Rolls(json, books);
            Shots(json, books.Production);
            Words(json, format);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(bytes.ToArray());
    }

    static void Head(Utf8JsonWriter json, Production production, PaperFormat format)
    {
        json.WriteString("code", production.Code.Value);
        json.WriteString("title", production.Title.Value);
        json.WriteString("gauge", production.Gauge.Name);
        json.WriteBoolean("cartridges", production.Gauge.ComesInCartridges);
        Fraction(json, "perFoot", production.Gauge.FramesPerFoot);
        json.WriteBoolean("metric", format.InMetres);
        json.WriteString("decimal", format.Words["decimal"]);
        json.WriteString("projected", production.ProjectedAt.ToString());
        json.WriteStartObject("marks");
        foreach (var (letters, mark) in ((string, Mark)[])[("G", Mark.Good), ("H", Mark.Hold), ("NG", Mark.NoGood), ("T", Mark.Test)])
        {
            json.WriteString(letters, format.Mark(mark));
        }

        json.WriteEndObject();
        List(json, "people", production.People, person =>
        {
            json.WriteString("id", person.Id.Value);
            json.WriteString("name", person.FullName.Value);
        });
        List(json, "ready", ReadyWords.Points(format.Words), point =>
        {
            json.WriteString("key", point.Key);
            json.WriteString("text", point.Text);
        });
    }

    static void Kit(Utf8JsonWriter json, Production production)
    {
        List(json, "bodies", production.Bodies, body =>
        {
            json.WriteString("name", body.Name.Value);
            json.WriteString("what", body.What?.Value ?? "");
            Texts(json, "speeds", body.Speeds.Select(s => s.Value.ToString()));
            Frames(json, "wind", body.FullWind?.Value);
            Texts(json, "marks", body.ShutterMarks.Select(m => m.Name.Value));
            json.WriteString("loading", body.LoadingSpeed?.Value.ToString());
        });
        List(json, "lenses", production.Lenses, lens =>
        {
            json.WriteString("name", lens.Name.Value);
            json.WriteString("what", lens.What?.Value ?? "");
            Stops(json, lens.Widest?.Value ?? _usualRing.Widest, lens.Smallest?.Value ?? _usualRing.Smallest);
        });
        Stops(json, _usualRing.Widest, _usualRing.Smallest);
        List(json, "filters", production.Filters, filter => Named(json, filter.Name.Value, filter.What?.Value));
        List(json, "meters", production.Meters, meter => Named(json, meter.Name.Value, meter.What?.Value));
        List(json, "motors", production.Motors, motor => Named(json, motor.Name.Value, motor.What?.Value));
        json.WriteStartObject("speeds");
        var speeds = production
            .Bodies.SelectMany(b => b.Speeds)
            .Concat(production.Motors.SelectMany(m => m.Speeds))
            .Select(s => s.Value)
            .Concat(production.Rolls.SelectMany(r => r.Takes).Select(t => t.Speed))
            .Concat(_usualSpeeds.Select(s => new Speed(s)))
            .Append(production.ProjectedAt);
        foreach (var speed in speeds.Distinct().Order())
        {
            Fraction(json, speed.ToString(), speed.FramesPerSecond);
        }

        json.WriteEndObject();
    }

    static void Stock(Utf8JsonWriter json, Books books, PaperFormat format)
    {
        json.WriteStartArray("stock");
        foreach (var lot in books.Stock.Counted)
        {
            foreach (var unit in lot.Sealed)
            {
                json.WriteStartObject();
                json.WriteString("lot", lot.Lot.Name.Value);
                json.WriteString("unit", PaperFormat.Number(unit));
                Frames(json, "frames", lot.Lot.Length.Value);
                json.WriteString("what", StockFacts.NameOf(lot.Lot));
                json.WriteEndObject();
            }
        }

        foreach (var end in books.Stock.ShortEnds.Where(e => e.OnHand.Frames > 0))
        {
            json.WriteStartObject();
            json.WriteString("lot", end.Lot.Name.Value);
            json.WriteString("shortEndOf", end.Parent.Name.Value);
            json.WriteString("name", StockFacts.NameOf(end, format));
            Frames(json, "frames", end.OnHand);
            json.WriteString("what", StockFacts.NameOf(end.Lot));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        Texts(json, "rolls", books.Production.Rolls.Select(r => r.Name.Value));
    }

    // The roll loaded last is the one that is most likely worked on.
    static void Rolls(Utf8JsonWriter json, Books books) =>
        List(json, "open", books.Shoot.Counted.Where(r => r.Roll.Unload is null).OrderByDescending(r => r.Roll.Load.On.Value), book =>
        {
            var at = book.Walk.EndOfLog;
            json.WriteString("roll", book.Roll.Name.Value);
            json.WriteString("by", at.By);
            json.WriteString("what", books.Production.LotOf(book.Roll) is { } lot ? StockFacts.NameOf(lot) : "");
            json.WriteStartObject("at");
            Frames(json, "position", at.Position ?? Footage.Zero);
            Frames(json, "zero", at.Zero);
            Frames(json, "driven", at.Driven);
            json.WriteBoolean("spring", at.IsOnSpring);
            json.WriteString("speed", at.Speed.ToString());
            json.WriteString("body", at.Body);
            Frames(json, "length", at.Length);
            json.WriteString("day", at.Day.ToString("yyyy'-'MM'-'dd", CultureInfo.InvariantCulture));
            json.WriteString("latest", at.Latest?.ToString("yyyy'-'MM'-'dd'T'HH':'mm", CultureInfo.InvariantCulture));
            json.WriteEndObject();
            if (book.Roll.Takes.LastOrDefault() is { } take)
            {
                Last(json, take);
            }
        });

    static void Last(Utf8JsonWriter json, Take take)
    {
        json.WriteStartObject("last");
        json.WriteString("scene", take.Scene.Value);
        json.WriteString("shot", take.Shot?.Value ?? "");
        json.WriteString("lens", take.Lens?.Value);
        json.WriteString("stop", take.Stop?.Value.ToString());
        json.WriteString("focus", Focus(take));
        Texts(json, "filter", take.Filters.Select(f => f.Value));
        json.WriteString("motor", take.Motor?.Value);
        json.WriteEndObject();
    }

    static string? Focus(Take take) =>
        take.Focus?.Value is not { } focus ? null
        : focus.IsInfinity ? "inf"
        : focus.Written?.Replace(" ", "", StringComparison.Ordinal);

    // Those of the list first; a shot that was made up on the set is a shot too.
    static void Shots(Utf8JsonWriter json, Production production)
    {
        var takes = production.Rolls.SelectMany(r => r.Takes).Where(t => !t.IsTest).ToList();
        var planned = production.Shots.Select(s => (Scene: s.Scene.Value, Shot: s.Shot?.Value ?? "", What: s.What?.Value ?? ""));
        var made = takes.Select(t => (Scene: t.Scene.Value, Shot: t.Shot?.Value ?? "", What: ""));
        List(json, "shots", planned.Concat(made).DistinctBy(s => (s.Scene, s.Shot)), shot =>
        {
            json.WriteString("scene", shot.Scene);
            json.WriteString("shot", shot.Shot);
            json.WriteString("what", shot.What);
            var numbers = takes.Where(t => t.ShotName == shot.Scene + shot.Shot).Select(t => t.Number.Value);
            json.WriteNumber("next", numbers.DefaultIfEmpty().Max() + 1);
        });
    }

    static void Words(Utf8JsonWriter json, PaperFormat format)
    {
        json.WriteStartObject("w");
        var words = format.Words.ForTemplates.Where(w =>
            w.Key.StartsWith("pocket_", StringComparison.Ordinal) || _sharedWords.Contains(w.Key, StringComparer.Ordinal)
        );
        foreach (var (key, text) in words.OrderBy(w => w.Key, StringComparer.Ordinal))
        {
            json.WriteString(key, text);
        }

        json.WriteEndObject();
    }

    static void Stops(Utf8JsonWriter json, Stop widest, Stop smallest)
    {
        json.WriteStartArray("stops");
        foreach (var row in LensRing.Rows(widest, smallest))
        {
            json.WriteStartArray();
            foreach (var stop in row)
            {
                json.WriteStringValue(stop);
            }

            json.WriteEndArray();
        }

        json.WriteEndArray();
    }

    static void Named(Utf8JsonWriter json, string name, string? what)
    {
        json.WriteString("name", name);
        json.WriteString("what", what ?? "");
    }

    static void Frames(Utf8JsonWriter json, string name, Footage? length)
    {
        if (length is { } known)
        {
            json.WriteNumber(name, known.Frames);
        }
        else
        {
            json.WriteNull(name);
        }
    }

    static void Fraction(Utf8JsonWriter json, string name, Ratio ratio)
    {
        json.WriteStartArray(name);
        json.WriteNumberValue((long)ratio.Numerator);
        json.WriteNumberValue((long)ratio.Denominator);
        json.WriteEndArray();
    }

    static void Texts(Utf8JsonWriter json, string name, IEnumerable<string> texts)
    {
        json.WriteStartArray(name);
        foreach (var text in texts)
        {
            json.WriteStringValue(text);
        }

        json.WriteEndArray();
    }

    static void List<T>(Utf8JsonWriter json, string name, IEnumerable<T> things, Action<T> write)
    {
        json.WriteStartArray(name);
        foreach (var thing in things)
        {
            json.WriteStartObject();
            write(thing);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
