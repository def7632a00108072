using Spoolbook.Schools;

namespace Spoolbook.Tests;

/// <summary>A school's folder holds productions at any depth; none is inside another.</summary>
public sealed class ProductionFoldersTests : IDisposable
{
    readonly string _school = Directory.CreateTempSubdirectory("school").FullName;

    public void Dispose() => Directory.Delete(_school, recursive: true);

    [Fact]
    public void Productions_are_found_at_any_depth_in_the_order_of_their_names()
    {
        Production("second-year/goat");
        Production("first-year/group-b/ferry");
        Production("first-year/group-a/ferry");
        Assert.Equal(["first-year/group-a/ferry", "first-year/group-b/ferry", "second-year/goat"], Found());
    }

    [Fact]
    public void Nothing_in_a_production_among_papers_or_hidden_is_another()
    {
        Production("goat");
        Production("goat/old-copy");
        Production("papers/goat");
        Production(".trash/goat");
        Assert.Equal(["goat"], Found());
    }

    [Fact]
    public void The_folder_itself_can_be_the_one_production()
    {
        Production(".");
        Assert.Equal(["."], Found());
    }

    void Production(string name)
    {
        Directory.CreateDirectory(Path.Combine(_school, name));
        File.WriteAllText(Path.Combine(_school, name, "production.yaml"), "title: Ferry\n");
    }

    IEnumerable<string> Found() => ProductionFolders.Below(_school).Select(path => Path.GetRelativePath(_school, path).Replace('\\', '/'));
}
