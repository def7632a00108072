using System.Globalization;
using System.Text;

namespace Spoolbook.Pdf.Files;

/// <summary>Writes numbers, names and texts in the syntax of PDF.</summary>
static class PdfSyntax
{
    /// <summary>A number with at most three decimals: a 72-thousandth of an inch is finer than any printer.</summary>
    public static string Number(double value) =>
        Math.Round(value, 3, MidpointRounding.AwayFromZero).ToString("0.###", CultureInfo.InvariantCulture);

    public static string Number(int value) => value.ToString(CultureInfo.InvariantCulture);

    public static string Reference(int objectNumber) => $"{Number(objectNumber)} 0 R";

    /// <summary>A text string as UTF-16 in hexadecimal, so that no character can end the string.</summary>
    public static string Text(string text) => "<FEFF" + Convert.ToHexString(Encoding.BigEndianUnicode.GetBytes(text)) + ">";

    public static string Date(DateTimeOffset moment) =>
        "(D:" + moment.UtcDateTime.ToString("yyyyMMddHHmmss", CultureInfo.InvariantCulture) + "+00'00')";

    public static string Rectangle(double left, double bottom, double right, double top) =>
        $"[{Number(left)} {Number(bottom)} {Number(right)} {Number(top)}]";
}
