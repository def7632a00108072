using System.Collections.Immutable;
using Spoolbook.Reading.Files;
using Spoolbook.Reading.Keys;
using Spoolbook.Reading.Trees;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Reading.Readers;

/// <summary>
/// The tree of a school's file, which every production of a term reads. It is kept for as long as the text stays the same: read for each
/// of four hundred productions, a file that names them all took a third of a check.
/// </summary>
static class SchoolTree
{
    static volatile Known? _last;

    /// <summary>The map that the file is; null where there is none. What is wrong with it is added each time.</summary>
    public static Node? Root(SourceFile source, FindingList findings)
    {
        var known = _last;
        if (known?.Name != source.Name || known.Text != source.Text)
        {
            var own = new FindingList();
            known = new Known(source.Name, source.Text, FileOpener.Root(source, own, KeyHomes.Knows), own.InOrder());
            _last = known;
        }

        foreach (var finding in known.Findings)
        {
            findings.Add(finding);
        }

        return known.Root;
    }

    sealed record Known(string Name, string Text, Node? Root, ImmutableArray<Finding> Findings);
}
