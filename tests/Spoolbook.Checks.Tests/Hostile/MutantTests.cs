using System.Collections.Concurrent;
using System.Globalization;
using CsCheck;
using Spoolbook.Checks.Tests.Pages;
using Spoolbook.Reading.Files;
using Spoolbook.Reading.Tests.Hostile;
using Spoolbook.Shoot.Records;
using Xunit.Abstractions;

namespace Spoolbook.Checks.Tests.Hostile;

/// <summary>
/// Copies of the sample with lines cut, doubled, swapped and wrongly indented, other types, huge numbers and odd
/// characters, cut off, nested too deep or with billion-laughs aliases: read, laid on the strip, accounted and checked.
/// The same number is always the same copy; <c>scripts/mutate-sheets</c> makes five thousand of them, and prints the
/// slowest.
/// </summary>
public sealed class MutantTests(ITestOutputHelper output)
{
    static readonly string[] Names = [.. SampleText.Files.Keys];

    static readonly Gen<(string Name, string Text)> Mutants =
        from name in Gen.Int[0, Names.Length - 1].Select(i => Names[i])
        from text in Mutation.Of(SampleText.Files[name])
        select (name, text);

    [Fact]
    public void However_the_sample_is_damaged_nothing_breaks_and_every_place_is_inside_its_file()
    {
        var (first, count) = (Asked("SPOOLBOOK_FIRST_MUTANT", 0), Asked("SPOOLBOOK_MUTANTS", 200));
        var faults = new ConcurrentDictionary<int, string>();

        Parallel.For(first, first + count, number =>
        {
            if (Fault(number) is { } fault)
            {
                faults[number] = fault;
            }
        });

        Assert.True(
            faults.IsEmpty,
            $"{faults.Count} of {count}:\n" + string.Join('\n', faults.OrderBy(f => f.Key).Take(20).Select(f => $"{f.Key}: {f.Value}"))
        );
    }

    /// <summary>
    /// Times are printed and not asserted, because they depend on how busy the machine is. Each copy's number goes into
    /// the file named by SPOOLBOOK_MUTANT_TIMES before it is read, and its time after, so that a copy that crashes the
    /// process is known too.
    /// </summary>
    [Fact]
    public void One_after_another_they_break_nothing_either_and_the_slowest_is_printed()
    {
        var (first, count) = (Asked("SPOOLBOOK_FIRST_MUTANT", 0), Asked("SPOOLBOOK_TIMED_MUTANTS", 20));
        using var told = Environment.GetEnvironmentVariable("SPOOLBOOK_MUTANT_TIMES") is { Length: > 0 } file
            ? new StreamWriter(file, append: true) { AutoFlush = true }
            : StreamWriter.Null;
        var times = new List<(double Milliseconds, int Number)>();
        var faults = new List<string>();
        for (var number = first; number < first + count; number++)
        {
            told.Write(FormattableString.Invariant($"{number} "));
            var before = Environment.CpuUsage.TotalTime;
            if (Fault(number) is { } fault)
            {
                faults.Add($"{number}: {fault}");
            }

            times.Add(((Environment.CpuUsage.TotalTime - before).TotalMilliseconds, number));
            told.WriteLine(FormattableString.Invariant($"{times[^1].Milliseconds:0.0}"));
        }

        times.Sort();
        output.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{count} copies: half took less than {times[count / 2].Milliseconds:0.0} ms of the processor's time, the slowest, "
                    + $"number {times[^1].Number}, {times[^1].Milliseconds:0} ms"
            )
        );
        Assert.True(faults.Count == 0, $"{faults.Count} of {count}:\n" + string.Join('\n', faults.Take(20)));
    }

    [Fact]
    public void The_same_number_is_the_same_copy_and_another_is_another()
    {
        Assert.Equal(Mutant(7), Mutant(7));
        Assert.True(Enumerable.Range(0, 200).Select(Mutant).Distinct().Count() > 190);
    }

    static (string Name, string Text) Mutant(int number) => Mutants.Generate(new PCG((uint)number, 20261004), null, out _);

    // What went wrong with a copy; null where nothing did.
    static string? Fault(int number)
    {
        var (name, text) = Mutant(number);
        try
        {
            var run = WholeRun.Of(TextFiles.Of([.. SampleText.Files.SetItem(name, text).Select(f => (f.Key, f.Value))]).WithPictures());
            var told = run.Report();
            return run.Findings.FirstOrDefault(f => f.Check == Running.Fault.Name) is { } broken
                    ? $"{name}: {broken.Message}, {broken.Figures[0].Value}"
                : told.Contains("   at ", StringComparison.Ordinal) || told.Contains("Exception", StringComparison.Ordinal)
                    ? $"{name}: {told}"
                : run.Findings.FirstOrDefault(f => !f.Others.Select(o => o.Place).Prepend(f.Place).All(p => IsInside(p, run.Sources)))
                    is { } outside
                    ? $"{name}: {outside.Check} at {string.Join(", ", outside.Others.Select(o => o.Place).Prepend(outside.Place))} lies "
                        + $"outside its file: {outside.Message}"
                : null;
        }
        catch (Exception e)
        {
            return $"{name}: {e}";
        }
    }

    // A place may be the end of a line, where something is missing.
    static bool IsInside(Place place, SourceTexts sources) =>
        sources.Line(place.File, place.Line) is { } line
            ? place.Column >= 1
                && place.Column <= line.Length + 1
                && place.Length >= 0
                && place.Column - 1 + place.Length <= line.Length + 1
            : sources.LinesIn(place.File) == 0 && (place.Line, place.Column) == (1, 1);

    static int Asked(string variable, int usual) =>
        int.TryParse(Environment.GetEnvironmentVariable(variable), NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            ? number
            : usual;
}
