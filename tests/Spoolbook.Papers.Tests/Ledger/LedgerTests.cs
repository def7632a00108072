using System.Text.Json;
using System.Text.Json.Nodes;
using CsCheck;
using Json.Schema;
using Spoolbook.Papers.Ledger;
using Spoolbook.Reading.Files;

namespace Spoolbook.Papers.Tests.Ledger;

public class LedgerTests
{
    static readonly JsonSchema Schema = JsonSchema.FromText(LedgerSchema.Text);

    [Fact]
    public void The_sample_keeps_to_the_schema() => Keeps(Shoots.Sample);

    [Fact]
    public void An_awkward_shoot_keeps_to_the_schema() => Keeps(Shoots.Awkward);

    [Fact]
    public void A_production_with_nothing_in_it_keeps_to_the_schema() =>
        Keeps(Shoots.Of(TextFiles.OneFile("spoolbook: 1\ntitle: Nothing yet\ncode: NIL\n")));

    [Fact]
    public void Shoots_drawn_by_lot_keep_to_the_schema_and_balance() =>
        GeneratedShoots.Yaml.Sample(
            yaml =>
            {
                var source = Shoots.Of(TextFiles.OneFile(yaml));
                Keeps(source);
                using var ledger = Read(source);
                foreach (var roll in ledger.RootElement.GetProperty("rolls").EnumerateArray())
                {
                    var film = roll.GetProperty("use").GetProperty("film");
                    var stretches = roll.GetProperty("film").EnumerateArray().Sum(s => Frames(s, "to") - Frames(s, "from"));
                    Assert.Equal(Frames(film, "loaded"), Frames(film, "exposed") + Frames(film, "left-over"));
                    Assert.Equal(Frames(film, "loaded"), stretches);
                }
            },
            iter: 60
        );

    [Fact]
    public void A_key_that_is_left_out_breaks_the_schema()
    {
        var ledger = JsonNode.Parse(LedgerWriter.Write(Shoots.Sample))!.AsObject();
        ledger["rolls"]![0]!.AsObject().Remove("takes");
        Assert.False(Schema.Evaluate(JsonSerializer.SerializeToElement(ledger)).IsValid);
    }

    [Fact]
    public void Two_runs_give_the_same_text() => Assert.Equal(LedgerWriter.Write(Shoots.Awkward), LedgerWriter.Write(Shoots.Awkward));

    [Fact]
    public void Lengths_are_written_in_frames_and_in_feet()
    {
        using var ledger = Read(Shoots.Awkward);
        var take = ledger
            .RootElement.GetProperty("rolls")
            .EnumerateArray()
            .Single(r => r.GetProperty("roll").GetString() == "R1")
            .GetProperty("takes")[0];
        Assert.Equal((571, "14+11"), (Frames(take, "to"), take.GetProperty("to").GetProperty("feet").GetString()));
    }

    [Fact]
    public void Money_keeps_its_cents_and_an_open_line_has_none()
    {
        using var ledger = Read(Shoots.Awkward);
        var lines = ledger.RootElement.GetProperty("cost").GetProperty("lines").EnumerateArray().ToList();
        var first = lines[0];

        // 3 units at 38.505 are 115.515: half a cent rounds away from zero.
        Assert.Equal("115.52", first.GetProperty("amount").GetRawText());
        var open = lines
            .Where(l => l.GetProperty("amount").ValueKind == JsonValueKind.Null)
            .Select(l => l.GetProperty("what").GetString())
            .Distinct();
        Assert.Equal(["process", "push", "service", "stock"], open.Order(StringComparer.Ordinal));
    }

    static void Keeps(LedgerSource source)
    {
        using var ledger = Read(source);
        var result = Schema.Evaluate(ledger.RootElement, new EvaluationOptions { OutputFormat = OutputFormat.List });
        Assert.True(
            result.IsValid,
            string.Join(
                "\n",
                (result.Details ?? [])
                    .Where(d => d.Errors is not null)
                    .Select(d => $"{d.InstanceLocation}: {string.Join("; ", d.Errors!.Values)}")
            )
        );
    }

    static JsonDocument Read(LedgerSource source) => JsonDocument.Parse(LedgerWriter.Write(source));

    static long Frames(JsonElement of, string key) => of.GetProperty(key).GetProperty("frames").GetInt64();
}
