using System.Collections.Immutable;
using System.Text;
using Spoolbook.Papers.Pages;
using Spoolbook.Reading.Files;

namespace Spoolbook.Checks.Tests.Pages;

/// <summary>The files of an example: the sheets, the pictures beside them, and the user's own templates.</summary>
sealed class ExampleFiles : IProductionFiles, ITemplateSource
{
    const string Own = "templates/";

    readonly TextFiles _files;
    readonly ImmutableDictionary<string, string> _templates;

    ExampleFiles(TextFiles files, ImmutableDictionary<string, string> templates) => (_files, _templates) = (files, templates);

    public bool IsOneFile => _files.IsOneFile;

    public ImmutableArray<string> Names => _files.Names;

    public ImmutableArray<PassedFile> PassedOver => _files.PassedOver;

    public byte[]? Ledger => _files.Ledger;

    public SchoolPlace? School => _files.School;

    /// <summary>Files by what their names say that they are.</summary>
    /// <param name="latin">Those that are not saved in UTF-8.</param>
    public static ExampleFiles Of(IReadOnlyDictionary<string, string> files, IReadOnlySet<string> latin)
    {
        var sheets = files.Where(f => IsSheet(f.Key));
        var pictures = files.Where(f => f.Key.EndsWith(".svg", StringComparison.Ordinal));
        var templates = files.Where(f => f.Key.StartsWith(Own, StringComparison.Ordinal));
        var text = TextFiles.OfBytes([
            .. sheets.Select(f => (f.Key, (latin.Contains(f.Key) ? Encoding.Latin1 : Encoding.UTF8).GetBytes(f.Value))),
        ]);
        return new(
            pictures.Aggregate(text, (all, picture) => all.With(picture.Key, Encoding.UTF8.GetBytes(picture.Value))),
            templates.ToImmutableDictionary(f => f.Key[Own.Length..], f => f.Value)
        );
    }

    /// <summary>The same with the sample's pictures beside them.</summary>
    public ExampleFiles WithPictures() => new(_files.WithPictures(), _templates);

    // Among the rolls lies whatever the example puts there, and the ledger among the papers is read too.
    static bool IsSheet(string name) =>
        name == SheetNames.Ledger
        || name.EndsWith(".yaml", StringComparison.Ordinal)
        || name.StartsWith("rolls/", StringComparison.Ordinal);

    public FileText Open(string name) => _files.Open(name);

    public PictureFile OpenPicture(string path) => _files.OpenPicture(path);

    public TemplateText? Find(string name) => _templates.TryGetValue(name, out var text) ? new TemplateText(name, text) : null;
}
