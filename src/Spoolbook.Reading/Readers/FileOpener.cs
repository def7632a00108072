using Spoolbook.Reading.Files;
using Spoolbook.Reading.Keys;
using Spoolbook.Reading.Trees;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Readers;

/// <summary>Opens files, and keeps their lines for the findings.</summary>
sealed class FileOpener(IProductionFiles files, FindingList findings)
{
    public List<SourceFile> Sources { get; } = [];

    /// <summary>The root of a file's tree; null, with a finding, where the file cannot be read or is empty.</summary>
    public Node? Open(string name) => Open(name, (source, into) => Root(source, into, KeyHomes.Knows));

    /// <summary>The same of the school's file, which other productions have read before.</summary>
    public Node? OpenSchool(string name) => Open(name, SchoolTree.Root);

    Node? Open(string name, Func<SourceFile, FindingList, Node?> root)
    {
        var file = files.Open(name);
        var source = file.Text is null ? null : new SourceFile(name, file.Text);
        if (source is not null)
        {
            Sources.Add(source);
        }

        if (file.Fault is { } fault)
        {
            findings.Add(fault.Check, fault.Message, new Place(name, fault.Line, fault.Column, source is null ? 0 : 1), fault.Help);
            return null;
        }

        return source is null ? null : root(source, findings);
    }

    /// <summary>The map that a file's text is; null, with a finding, where there is none.</summary>
    /// <param name="isKey">Which names are keys; null where any may be.</param>
    public static Node? Root(SourceFile source, FindingList findings, Func<string, bool>? isKey = null)
    {
        var before = findings.Count;
        var root = TreeReader.Read(source, findings, isKey);
        if (root is null or ScalarNode { IsBlank: true })
        {
            if (findings.Count == before)
            {
                findings.Add(
                    SheetChecks.MissingKey,
                    Sentence.Of("sheet/missing-key.message.file"),
                    source.Top,
                    Sentence.Of("sheet/missing-key.help.file")
                );
            }

            return null;
        }

        if (root is ScalarNode)
        {
            findings.Add(
                SheetChecks.NotYaml,
                Sentence.Of("sheet/not-yaml.message.text"),
                root.Place,
                Sentence.Of("sheet/not-yaml.help.text")
            );
            return null;
        }

        return root;
    }
}
