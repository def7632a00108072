using System.Reflection;
using System.Text.RegularExpressions;
using Spoolbook.Checks.Running;
using Spoolbook.Papers.Faults;
using Spoolbook.Reading;
using Spoolbook.Shoot.Shipments;

namespace Spoolbook.Checks.Tests;

/// <summary>The conventions of the checks. Each failure names its offenders.</summary>
public partial class ListTests
{
    static readonly Check[] Written =
    [
        .. from type in typeof(CheckList).Assembly.GetTypes()
        from field in type.GetFields(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic)
        where field.FieldType.IsSubclassOf(typeof(Check))
        select (Check)field.GetValue(null)!,
    ];

    [Fact]
    public void Every_check_that_is_written_is_listed() => AssertNone(Written.Except(CheckList.All).Select(c => c.Name));

    [Fact]
    public void Every_finding_of_reading_printing_and_shipping_is_listed()
    {
        Assert.Equal(SheetChecks.All.Order(StringComparer.Ordinal), CheckList.All.Where(c => c.Round == Round.Reading).Select(c => c.Name));
        Assert.Equal(
            PaperChecks.All.Order(StringComparer.Ordinal),
            CheckList.All.Where(c => c.Round == Round.Printing).Select(c => c.Name)
        );
        Assert.Equal(
            ShipmentChecks.All.Order(StringComparer.Ordinal),
            CheckList.All.Where(c => c.Round == Round.Shipping).Select(c => c.Name)
        );
    }

    [Fact]
    public void No_source_names_a_finding_that_is_not_listed() =>
        AssertNone(
            from file in Directory.EnumerateFiles(Path.Combine(Repository.Root, "src"), "*.cs", SearchOption.AllDirectories)
            where !file.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal)
            from said in SaidName().Matches(File.ReadAllText(file))
            let name = said.Groups["name"].Value
            where said.Groups["new"].Success || CheckList.Groups.Contains(name.Split('/')[0])
            where CheckList.All.All(c => c.Name != name)
            select $"{Path.GetFileName(file)} says {name}"
        );

    [Fact]
    public void Every_check_has_its_page() => AssertNone(CheckList.All.Select(c => c.Name).Where(c => Catalogue.Page(c) is null));

    [Fact]
    public void Every_page_belongs_to_a_check() => AssertNone(Catalogue.All.Select(p => p.Name).Except(CheckList.All.Select(c => c.Name)));

    [Fact]
    public void A_page_has_the_level_of_its_check() =>
        AssertNone(
            CheckList.All.Where(c => Catalogue.Page(c.Name) is { } page && page.Level != c.Level).Select(c => $"{c.Name} is {c.Level}")
        );

    [Fact]
    public void A_name_is_two_words_in_small_letters() => AssertNone(CheckList.All.Select(c => c.Name).Where(c => !NameForm().IsMatch(c)));

    [Fact]
    public void A_file_is_named_after_its_check() =>
        AssertNone(
            from type in typeof(CheckList).Assembly.GetTypes()
            let field = type.GetField("Check", BindingFlags.Static | BindingFlags.Public)
            where field is not null
            let what = ((Check)field.GetValue(null)!).Name.Split('/')[1]
            where !string.Equals(what.Replace("-", "", StringComparison.Ordinal), type.Name, StringComparison.OrdinalIgnoreCase)
            select $"{type.Name} checks {what}"
        );

    [Fact]
    public void No_name_is_used_twice() => AssertNone(CheckList.All.GroupBy(c => c.Name).Where(g => g.Count() > 1).Select(g => g.Key));

    [Fact]
    public void Groups_are_together_and_each_is_in_order() =>
        Assert.Equal(
            CheckList.All.OrderBy(c => CheckList.Groups.IndexOf(c.Group)).ThenBy(c => c.Name, StringComparer.Ordinal).Select(c => c.Name),
            CheckList.All.Select(c => c.Name)
        );

    [Fact]
    public void A_tolerance_is_named_on_the_page_of_a_check() =>
        AssertNone(Tolerances.All.Where(t => !Catalogue.All.Any(p => p.Names(t))).Select(t => t.Name));

    [Fact]
    public void A_tolerance_has_a_unique_name_in_small_letters_and_a_reason()
    {
        AssertNone(Tolerances.All.Where(t => !ToleranceForm().IsMatch(t.Name)).Select(t => t.Name));
        AssertNone(Tolerances.All.GroupBy(t => t.Name).Where(g => g.Count() > 1).Select(g => g.Key));
        AssertNone(Tolerances.All.Where(t => !t.Description.EndsWith('.') || !t.Source.EndsWith('.')).Select(t => t.Name));
    }

    static void AssertNone(IEnumerable<string> offenders) => Assert.Equal("", string.Join('\n', offenders));

    [GeneratedRegex("^[a-z]+/[a-z]+(-[a-z]+)*$")]
    private static partial Regex NameForm();

    // A name in quotes; where a comma follows and something is made with it, of any group.
    [GeneratedRegex("(?<new>new(?: Finding)?\\(\\s*)?\"(?<name>[a-z]+/[a-z]+(?:-[a-z]+)*)\"(?(new)\\s*,)")]
    private static partial Regex SaidName();

    [GeneratedRegex("^[a-z]+(-[a-z]+)+$")]
    private static partial Regex ToleranceForm();
}
