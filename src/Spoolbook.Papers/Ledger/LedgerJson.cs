using System.Text.Json;
using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Papers.Ledger;

/// <summary>Writes the trade's values in the ledger. A value that was not written down is null, never left out.</summary>
sealed class LedgerJson(Utf8JsonWriter json, Gauge gauge)
{
    // Until it is flushed, a writer has all that it wrote in a buffer of its own.
    const int Pending = 1 << 16;

    public Utf8JsonWriter Json => json;

    public void Word(string key, string? word)
    {
        if (word is null)
        {
            json.WriteNull(key);
        }
        else
        {
            json.WriteString(key, SafeText.Of(word));
        }
    }

    public void Words(string key, IEnumerable<string> words)
    {
        json.WriteStartArray(key);
        foreach (var word in words)
        {
            json.WriteStringValue(SafeText.Of(word));
        }

        json.WriteEndArray();
    }

    public void Count(string key, long? number)
    {
        if (number is { } known)
        {
            json.WriteNumber(key, known);
        }
        else
        {
            json.WriteNull(key);
        }
    }

    /// <summary>A number to six decimals.</summary>
    public void Number(string key, Ratio? number)
    {
        json.WritePropertyName(key);
        if (number is { } known)
        {
            json.WriteRawValue(known.ToText(6));
        }
        else
        {
            json.WriteNullValue();
        }
    }

    /// <summary>An amount or a rate, with all its decimals.</summary>
    public void Money(string key, decimal? amount)
    {
        if (amount is { } known)
        {
            json.WriteNumber(key, known);
        }
        else
        {
            json.WriteNull(key);
        }
    }

    public void Flag(string key, bool? flag)
    {
        if (flag is { } known)
        {
            json.WriteBoolean(key, known);
        }
        else
        {
            json.WriteNull(key);
        }
    }

    /// <summary>A distance from the film plane; <c>infinity</c> as a word.</summary>
    public void Millimetres(string key, Distance? distance)
    {
        if (distance is { IsInfinity: true })
        {
            json.WriteString(key, "infinity");
        }
        else
        {
            Number(key, distance?.Millimetres);
        }
    }

    public void Date(string key, DateOnly? date) =>
        Word(key, date?.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture));

    public void Moment(string key, DateTime? moment) =>
        Word(key, moment?.ToString("yyyy-MM-dd'T'HH:mm", System.Globalization.CultureInfo.InvariantCulture));

    /// <summary>A length or a position, both as frames and as feet and frames.</summary>
    public void Length(string key, Footage? length)
    {
        if (length is not { } known)
        {
            json.WriteNull(key);
            return;
        }

        json.WriteStartObject(key);
        json.WriteNumber("frames", known.Frames);
        json.WriteString("feet", known.FeetAndFrames(gauge));
        json.WriteEndObject();
    }

    public void Objects<T>(string key, IEnumerable<T> things, Action<T> write)
    {
        json.WriteStartArray(key);
        foreach (var thing in things)
        {
            json.WriteStartObject();
            write(thing);
            json.WriteEndObject();
            if (json.BytesPending > Pending)
            {
                json.Flush();
            }
        }

        json.WriteEndArray();
    }

    public void Object(string key, Action write)
    {
        json.WriteStartObject(key);
        write();
        json.WriteEndObject();
    }

    public void Tally(string key, Tally tally) => Object(key, () =>
        {
            Length("good", tally.Good);
            Length("hold", tally.Hold);
            Length("no-good", tally.NoGood);
            Length("waste", tally.Waste);
            Object("waste-by", () =>
            {
                foreach (var cause in Enum.GetValues<WasteCause>())
                {
                    Length(Codes.Of(cause), tally.WastedBy(cause));
                }
            });
            Length("left-over", tally.ShortEnd);
            Length("exposed", tally.Exposed);
            Length("loaded", tally.Loaded);
        });

    public void Use(string key, UseOfFilm use) => Object(key, () =>
        {
            Tally("film", use.Tally);
            Count("takes", use.Takes);
            Count("shots", use.Shots);
            Number("takes-a-shot", use.TakesAShot);
            Number("screen-seconds", use.ScreenTime);
            Number("exposed-to-good", use.ExposedToGood);
            Number("exposed-to-planned", use.ExposedToPlanned);
            Number("waste-rate", use.WasteRate);
        });
}
