using System.Collections.Concurrent;
using Spoolbook.Checks;
using Spoolbook.Reading;
using Spoolbook.Reading.Files;
using Spoolbook.Shoot.Departments;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Schools;

/// <summary>A school's own book, gathered while its productions are checked or made.</summary>
/// <param name="folder">The school's folder, as typed by the user.</param>
internal sealed class SchoolTerm(string folder, CommandEnvironment around)
{
    readonly ConcurrentBag<ProductionShare> _shares = [];

    /// <summary>The school's file, as a path from the folder that the command runs in.</summary>
    public string Name { get; } = folder is "." or "" ? Department.FileName : $"{folder.TrimEnd('/', '\\')}/{Department.FileName}";

    /// <summary>The school's folder.</summary>
    public string Folder { get; } = Path.GetFullPath(folder, around.Folder);

    /// <summary>What makes the school's own papers; null where none are made, as by <c>check</c>.</summary>
    public Func<string, CheckedProduction, DepartmentBook, WrittenPapers?>? Papers { get; init; }

    /// <summary>Keeps what the school needs of a production. One that could not be read has nothing to keep.</summary>
    public void Add(CheckedProduction found)
    {
        if (found is { Books: { } books, IsUnfinished: false })
        {
            _shares.Add(ProductionShare.Of(books.Production.InSchool ?? books.Production.Code.Value, books, found.Findings));
        }
    }

    /// <summary>Reads the school's file, keeps its book and checks it. The book is null where the file could not be read.</summary>
    public (CheckedProduction Found, DepartmentBook? Book) Close()
    {
        var read = DepartmentFile.Read(new FolderFiles(Folder));
        if (read.Department is not { } department)
        {
            return (new CheckedProduction(read.Sources, null, read.Findings, []), null);
        }

        var book = DepartmentBook.Sum(department, _shares, DateOnly.FromDateTime(around.Made.DateTime));
        var found = FindingOrder.Sort([.. read.Findings, .. CheckRunner.OnDepartment(book)]);
        return (new CheckedProduction(read.Sources, null, found, []), book);
    }
}
