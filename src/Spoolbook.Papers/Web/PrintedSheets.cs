using System.Globalization;
using System.Xml.Linq;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Typesetting.Layout;
using Spoolbook.Papers.Typesetting.Setup;

namespace Spoolbook.Papers.Web;

/// <summary>
/// Gives each label the place that it has on its sheet, for a browser that prints: on the screen a wall of cards, on
/// paper the same grid as in the PDF, so that labels printed from either go onto the same bought sheets.
/// </summary>
internal static class PrintedSheets
{
    // A browser cannot set a text smaller until it fits. These are the letters that a label holds beside its roll, at
    // the usual size of small print and at the next smaller one.
    const int Usual = 300;
    const int Full = 440;

    public static void Prepare(XElement article, PageSetup setup)
    {
        foreach (var section in article.Descendants().Where(e => e.Is("section") && e.HasClass("sheet")).ToList())
        {
            var places = LabelPlaces.Of(section, setup);
            var leaves = places.Sheets([.. section.Elements().Where(e => e.HasClass("label"))]).ToList();
            section.RemoveNodes();
            foreach (var leaf in leaves)
            {
                section.Add(
                    new XElement(
                        section.Name.Namespace + "div",
                        new XAttribute("class", "leaf"),
                        new XAttribute("style", $"--leaf: {Points(places.Bottom)}"),
                        leaf.Select((label, place) => Placed(label, place, places))
                    )
                );
            }
        }
    }

    static XElement? Placed(XElement? label, int place, LabelPlaces places)
    {
        if (label is null)
        {
            return null;
        }

        var (x, y) = places.Corner(place);
        label.SetAttributeValue("style", $"--x: {Points(x)}; --y: {Points(y)}; --w: {Points(places.Width)}; --h: {Points(places.Height)}");
        var letters = label.Descendants().Where(e => e.Is("p")).Sum(p => p.Value.Trim().Length);
        if (letters > Usual)
        {
            label.AddClass(letters > Full ? "fuller" : "full");
        }

        return label;
    }

    static string Points(double points) => points.ToString("0.##", CultureInfo.InvariantCulture) + "pt";
}
