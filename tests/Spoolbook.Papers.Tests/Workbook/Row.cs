using System.Globalization;
using System.Text.Json;

namespace Spoolbook.Papers.Tests.Workbook;

/// <summary>A row of a table, in the trade's terms.</summary>
sealed class Row(XlsxSheet sheet, IReadOnlyDictionary<string, string> addresses, double framesPerUnit)
{
    public string Text(string head) => sheet.Value(addresses[head]);

    public double Number(string head) => double.Parse(Text(head), CultureInfo.InvariantCulture);

    public long Frames(string head) => long.Parse(Text(head), CultureInfo.InvariantCulture);

    /// <summary>A length, in whole frames.</summary>
    public long Length(string head) => ToFrames(Text(head), framesPerUnit);

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

    public static long ToFrames(string cell, double framesPerUnit)
    {
        var frames = double.Parse(cell, CultureInfo.InvariantCulture) * framesPerUnit;
        Assert.InRange(Math.Abs(frames - Math.Round(frames)), 0, 1e-6);
        return (long)Math.Round(frames);
    }

    public static string ToCents(string cell)
    {
        var amount = decimal.Parse(cell, NumberStyles.Float, CultureInfo.InvariantCulture);
        var cents = Math.Round(amount, 2);
        Assert.InRange(Math.Abs(amount - cents), 0, 0.000001m);
        return cents.ToString("0.00", CultureInfo.InvariantCulture);
    }
}
