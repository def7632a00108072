using System.Globalization;
using System.Text.Json;

namespace Spoolbook.Papers.Tests.Workbook;

/// <summary>A row of a table, in the trade's terms.</summary>
sealed class Row(XlsxSheet sheet, IReadOnlyDictionary<string, string> addresses, double framesPerUnit)
{
    public string Text(string head) => sheet.Value(addresses[head]);

    public double Number(string head) => double.Parse(Text(head), CultureInfo.InvariantCulture);

    public long Frames(string head) => long.Parse(Text(head), CultureInfo.InvariantCulture);

    /// <summary>A length, in whole frames; what is read beside it says the same.</summary>
    public long Length(string head)
    {
        string[] beside = [head + " frames", head + " frame", head.Replace("Needed", "Simulated", StringComparison.Ordinal), "Frames"];
        var frames = Frames(beside.First(h => h != head && addresses.ContainsKey(h)));
        var said = Text(head);
        if (said.Split('+') is [var feet, var over])
        {
            var film =
                (Math.Abs(double.Parse(feet, CultureInfo.InvariantCulture)) * framesPerUnit)
                + double.Parse(over, CultureInfo.InvariantCulture);
            Assert.InRange(Math.Abs(frames) - film, 0, 1);
        }
        else
        {
            Assert.True(
                said == "–" ? frames == 0 : Math.Abs(ToCentimetres(said) - (frames / framesPerUnit * 100)) < 1.6,
                $"{head}: {said}"
            );
        }

        return frames;
    }

    static double ToCentimetres(string metres) => double.Parse(metres, CultureInfo.InvariantCulture) * 100;

    public string Cents(string head) => ToCents(Text(head));

    public void Ratio(string head, JsonElement expected)
    {
        if (expected.ValueKind == JsonValueKind.Null)
        {
            Assert.Equal("", Text(head));
        }
        else
        {
            Assert.Equal(expected.GetDouble(), Number(head), tolerance: 1e-6);
        }
    }

    public static string ToCents(string cell)
    {
        var amount = decimal.Parse(cell, NumberStyles.Float, CultureInfo.InvariantCulture);
        var cents = Math.Round(amount, 2);
        Assert.InRange(Math.Abs(amount - cents), 0, 0.000001m);
        return cents.ToString("0.00", CultureInfo.InvariantCulture);
    }
}
