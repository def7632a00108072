namespace Spoolbook.Film.Reckonings;

/// <summary>A line of a reckoning, the same in a table and in JSON.</summary>
/// <param name="Label">What it is.</param>
/// <param name="Value">Its value as printed, without the unit.</param>
/// <param name="Unit">Its unit; empty where the value needs none.</param>
/// <param name="Number">Its value for a program, not rounded; null where it is not a number.</param>
public sealed record ReckoningLine(string Label, string Value, string Unit, double? Number)
{
    internal static ReckoningLine Of(string label, string value, string unit = "") => new(label, value, unit, null);

    internal static ReckoningLine Of(string label, Ratio value, int places, string unit) =>
        new(label, value.ToShortText(places), unit, value.ToDouble());

    internal static ReckoningLine Of(string label, double value, int places, string unit) =>
        new(label, ReckoningText.Number(value, places), unit, double.IsFinite(value) ? value : null);
}
