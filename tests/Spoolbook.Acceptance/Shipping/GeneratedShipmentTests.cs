using System.Text.Json;
using System.Text.RegularExpressions;
using Spoolbook.Shoots;

namespace Spoolbook.Acceptance.Shipping;

/// <summary>The papers of a consignment out of generated terms: every can once, wherever a lab counts.</summary>
public sealed partial class GeneratedShipmentTests : IDisposable
{
    readonly Bench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Theory]
    [InlineData(1, 2)]
    [InlineData(2, 4)]
    public void A_can_is_on_one_order_one_label_one_line_of_the_packing_list_and_one_of_the_manifest(int seed, int productions)
    {
        new TermOfShoots(seed, productions, MistakeRates.None) { IsSent = false }.WriteTo(_bench.PathOf("term"));

        var (status, printed, error) = _bench.Run("ship", "term", "--sent", "2026-10-05", "--box", "10");
        Assert.True(status == 0, printed + error);

        var folder = Assert.Single(Directory.GetDirectories(_bench.PathOf("term/shipments")));
        using var manifest = JsonDocument.Parse(File.ReadAllText(Path.Combine(folder, "manifest.json")));
        var codes = manifest.RootElement.GetProperty("cans").EnumerateArray().Select(c => c.GetProperty("can").GetString()!).ToList();
        Assert.Equal(productions * 12, codes.Count);
        Assert.Equal(codes.Distinct(), codes);
        Assert.Equal(codes, CodesIn(Text("manifest.csv")));
        Assert.Equal(codes, CodesIn(Text("consignment.yaml")));
        // The order has the cans by production.
        Assert.Equal(codes.Order(), CodesIn(Text("order.html")).Order());
        Assert.All((string[])["packing-list.pdf", "labels.pdf"], paper =>
        {
            var text = string.Concat(Pages.TextOf(Path.Combine(folder, paper)));
            Assert.All(codes, code => Assert.Equal(2, text.Split(code).Length));
        });

        string Text(string name) => File.ReadAllText(Path.Combine(folder, name));
    }

    static IEnumerable<string> CodesIn(string text) => Code().Matches(text).Select(m => m.Value);

    [GeneratedRegex(@"\bP\d{3}/R\d\d/[0-9A-Z]\b")]
    private static partial Regex Code();
}
