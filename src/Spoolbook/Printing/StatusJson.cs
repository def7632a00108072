using System.Globalization;
using System.Text.Json;
using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Printing;

/// <summary>Where everything is, for programs, in the form of <c>status.schema.json</c>. Lengths are in frames.</summary>
internal static class StatusJson
{
    public static string Write(CheckedProduction found, DateOnly today) =>
        JsonText.Object(json =>
        {
            var books = found.Books!;
            json.WriteNumber("spoolbook", 1);
            json.WriteString("title", books.Production.Title.Value);
            json.WriteString("code", books.Production.Code.Value);
            json.WriteString("gauge", books.Production.Gauge.Name);
            if (books.Stock.DayAt(today) is { } day)
            {
                json.Object("day", j => Write(j, day, today));
            }

            json.Objects("cameras", books.Cameras.Cameras, (j, camera) =>
            {
                j.WriteString("body", camera.Body);
                j.WriteString("roll", camera.Roll?.Name.Value);
                WriteLength(j, "left", camera.Left);
                WriteLength(j, "loaded", camera.Book?.Strip.Loaded);
            });
            json.Objects("rolls", books.Shoot.Counted, (j, roll) =>
            {
                j.WriteString("roll", roll.Roll.Name.Value);
                j.WriteBoolean("unloaded", roll.Roll.Unload is not null);
                Write(j, roll.Tally);
            });
            json.Object("total", j => Write(j, books.Shoot.Total));
            json.Objects("stock", books.Stock.Kinds, (j, kind) =>
            {
                j.WriteString("stock", kind.Name);
                j.WriteNumber("cans", kind.Unopened);
                j.WriteNumber("shortEnds", kind.ShortEndCans);
                j.WriteNumber("onHand", kind.OnHand.Frames);
                j.WriteNumber("inCamera", kind.InCamera.Frames);
                j.WriteNumber("left", kind.Left.Frames);
            });
            if (books.Coverage.Left is { } left)
            {
                json.Object("shots", j =>
                {
                    Names(j, "got", books.Coverage.ListedOnce.Where(s => s.IsGot));
                    Names(j, "left", left);
                    Names(j, "onHold", left.Where(s => s.HasHeld));
                });
            }

            json.Object("counts", j =>
            {
                j.WriteNumber("errors", found.Findings.Count(f => f.Level == Level.Error));
                j.WriteNumber("warnings", found.Findings.Count(f => f.Level == Level.Warning));
                j.WriteNumber("notes", found.Findings.Count(f => f.Level == Level.Note));
            });
        });

    static void Write(Utf8JsonWriter json, StockDay day, DateOnly today)
    {
        json.WriteString("on", day.On.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
        json.WriteBoolean("today", day.On == today);
        if (day.Day is { } shooting)
        {
            json.WriteNumber("day", shooting.Number.Value);
        }

        json.WriteNumber("takes", day.Use.Takes);
        Write(json, day.Use.Tally);
    }

    static void Write(Utf8JsonWriter json, Tally tally)
    {
        json.WriteNumber("good", tally.Good.Frames);
        json.WriteNumber("hold", tally.Hold.Frames);
        json.WriteNumber("ng", tally.NoGood.Frames);
        json.WriteNumber("waste", tally.Waste.Frames);
        json.WriteNumber("left", tally.ShortEnd.Frames);
    }

    static void WriteLength(Utf8JsonWriter json, string name, Footage? length)
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

    static void Names(Utf8JsonWriter json, string name, IEnumerable<CoveredShot> shots)
    {
        json.WriteStartArray(name);
        foreach (var shot in shots)
        {
            json.WriteStringValue(shot.Name);
        }

        json.WriteEndArray();
    }
}
