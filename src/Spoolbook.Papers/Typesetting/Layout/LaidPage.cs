using Spoolbook.Papers.Typesetting.Drawing;

namespace Spoolbook.Papers.Typesetting.Layout;

/// <summary>A page's pieces, each with its height on the page.</summary>
sealed class LaidPage(bool wholePage)
{
    readonly List<(Slice Slice, double Top)> _placed = [];
    readonly List<(MarkGroup MarkGroup, double Top)> _heads = [];

    /// <summary>A sheet of labels: no running head, no margins.</summary>
    public bool WholePage { get; } = wholePage;

    /// <summary>Begins with the paper's own heading, so that a running head would say it twice.</summary>
    public bool IsTitled => _placed.Count > 0 && _placed[0].Slice.IsTitle;

    public bool IsEmpty => _placed.Count == 0;

    /// <summary>How much of the page is used, from its top.</summary>
    public double Filled => _placed.Select(entry => entry.Top + entry.Slice.Height).DefaultIfEmpty(0).Max();

    /// <summary>Whether something is here that should be on the first page.</summary>
    public bool HasFront => _placed.Any(entry => entry.Slice.IsFront);

    /// <summary>Whether the template asked for this page, and not an overflow of the page before.</summary>
    public bool Asked => _placed.Count > 0 && _placed[0].Slice.NewPage;

    public void Add(Slice slice, double top) => _placed.Add((slice, top));

    public void AddHead(RepeatedHead head, double top) => _heads.AddRange(head.Pieces.Select(piece => (piece, top)));

    /// <summary>The names of its places, each with its height on the page.</summary>
    public IEnumerable<(string Name, double Top)> Names => _placed.SelectMany(entry => entry.Slice.Names.Select(name => (name, entry.Top)));

    public IEnumerable<(MarkGroup MarkGroup, double Top)> Pieces =>
        [
            .. Galley.Frames(_placed).Select(frame => (frame, 0.0)),
            .. _heads,
            .. _placed.SelectMany(entry => entry.Slice.Pieces.Select(piece => (piece, entry.Top))),
        ];
}
