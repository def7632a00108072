using System.CommandLine;
using System.CommandLine.Parsing;
using Spoolbook.Film;
using Spoolbook.Film.Reckonings;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Commands;

/// <summary>Options written in the trade's forms, and those that several sums share.</summary>
internal static class ReckonOptions
{
    public static Option<ReckoningUnits> Units() => Choice.Of<ReckoningUnits>("--units", "Lengths and distances in feet or in metres.");

    public static Option<Speed?> Speed(string name, string description) => Written(name, description, Film.Speed.Parse);

    public static Option<Gauge?> Gauge(string name, string description) => Words(name, description, ReadGauge);

    /// <summary>The names of the gauges, for a message.</summary>
    public static string Gauges => string.Join(", ", Film.Gauge.All.Select(gauge => $"'{gauge.Name}'"));

    /// <summary>A length of film as first argument; its gauge is not known yet.</summary>
    public static Argument<string> Length() =>
        new("length") { Description = "31+12 (feet + frames), 31.3ft, 1252fr, 9.5m, or 12s at the speed." };

    /// <summary>One value in a written form; null where it was not given.</summary>
    /// <param name="objection">What is wrong with a value that could be read; null where nothing is.</param>
    public static Option<T?> Written<T, TFault>(
        string name,
        string description,
        Func<string, Parsed<T, TFault>> read,
        Func<T, string?>? objection = null
    )
        where T : struct
        where TFault : struct, Enum =>
        new(name)
        {
            Description = description,
            Arity = ArgumentArity.ExactlyOne,
            CustomParser = result => Read(result, result.Tokens[0].Value, read, objection),
        };

    /// <summary>A value in a written form, which may be repeated.</summary>
    public static Option<T[]> Repeated<T, TFault>(string name, string description, Func<string, Parsed<T, TFault>> read)
        where T : struct
        where TFault : struct, Enum =>
        new(name)
        {
            Description = description,
            Arity = ArgumentArity.OneOrMore,
            CustomParser = result => [.. result.Tokens.Select(token => Read(result, token.Value, read, null).GetValueOrDefault())],
        };

    /// <summary>A value by name; the objection is empty where there is a value.</summary>
    public static Option<T?> Words<T>(string name, string description, Func<string, (T? Value, string Objection)> read)
        where T : class =>
        new(name)
        {
            Description = description,
            Arity = ArgumentArity.ExactlyOne,
            CustomParser = result => Named(result, result.Tokens[0].Value, read),
        };

    /// <summary>A value by name, which may be repeated.</summary>
    public static Option<T[]> RepeatedWords<T>(string name, string description, Func<string, (T? Value, string Objection)> read)
        where T : class =>
        new(name)
        {
            Description = description,
            Arity = ArgumentArity.OneOrMore,
            CustomParser = result => [.. result.Tokens.Select(token => Named(result, token.Value, read)).OfType<T>()],
        };

    static T? Read<T, TFault>(ArgumentResult result, string text, Func<string, Parsed<T, TFault>> read, Func<T, string?>? objection)
        where T : struct
        where TFault : struct, Enum
    {
        var parsed = read(text);
        var wrong = parsed.TryGet(out var value) ? objection?.Invoke(value) : SlipSentences.Of(parsed.Slip!).Whole.ToString();
        if (wrong is null)
        {
            return value;
        }

        Object(result, wrong);
        return null;
    }

    static T? Named<T>(ArgumentResult result, string text, Func<string, (T? Value, string Objection)> read)
        where T : class
    {
        var (value, objection) = read(text);
        if (value is null)
        {
            Object(result, objection);
        }

        return value;
    }

    // With the option's name: a line may have a dozen figures.
    static void Object(ArgumentResult result, string objection) =>
        result.AddError($"{(result.Parent as OptionResult)?.Option.Name}: {objection}");

    static (Gauge? Value, string Objection) ReadGauge(string text) =>
        (Film.Gauge.Named(text), $"'{text}' is not a gauge that Spoolbook knows: write one of {Gauges}");
}
