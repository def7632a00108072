using Spoolbook.Reading.Files;
using Spoolbook.Reading.Keys;
using Spoolbook.Reading.Readers;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading;

/// <summary>A school's own file to its record, for the school and not for one production.</summary>
public static class DepartmentFile
{
    /// <summary>Reads whatever is there. A mistake in the file is a finding, and the rest is read all the same.</summary>
    /// <param name="files">The school's folder.</param>
    public static DepartmentResult Read(IProductionFiles files)
    {
        var findings = new FindingList();
        var context = new ReadingContext(findings, files.OpenPicture);
        var opener = new FileOpener(files, findings);
        var department =
            opener.Open(Department.FileName) is { } root && MapReader.Alone(root, DepartmentKeys.Table, context) is { } map
                ? DepartmentReader.Read(map, context)
                : null;
        if (department is not null)
        {
            // A list of people that could not be read whole may lack the one who is named.
            if (findings.Count == 0)
            {
                References.Check(department, findings);
            }

            Names.Check(department, findings);
        }

        return new DepartmentResult(department, findings.InOrder(), new SourceTexts(opener.Sources));
    }
}
