using Spoolbook.Papers.Pdf.Drawing;

namespace Spoolbook.Papers.Pdf.Layout;

/// <summary>A page's pieces, each with the height that it hangs from.</summary>
sealed class LaidPage(bool wholePage)
{
    readonly List<(Slice Slice, double Top)> _placed = [];
    readonly List<(Piece Piece, double Top)> _heads = [];

    /// <summary>A sheet of labels: no running head, no margins.</summary>
    public bool WholePage { get; } = wholePage;

    public bool IsEmpty => _placed.Count == 0;

    /// <summary>How much of the page is taken, from its top.</summary>
    public double Filled => _placed.Select(entry => entry.Top + entry.Slice.Height).DefaultIfEmpty(0).Max();

    /// <summary>Whether the template asked for this page rather than what stands before having run over.</summary>
    public bool Asked => _placed.Count > 0 && _placed[0].Slice.NewPage;

    public void Add(Slice slice, double top) => _placed.Add((slice, top));

    public void AddHead(RepeatedHead head, double top) => _heads.AddRange(head.Pieces.Select(piece => (piece, top)));

    public IEnumerable<(Piece Piece, double Top)> Pieces =>
    [
        .. Galley.Frames(_placed).Select(frame => (frame, 0.0)),
        .. _heads,
        .. _placed.SelectMany(entry => entry.Slice.Pieces.Select(piece => (piece, entry.Top))),
    ];
}

/// <summary>
/// Cuts a galley into pages. No slice is lost: what wants to stay together does if a page can hold it, and a slice that
/// no page can hold is torn.
/// </summary>
sealed class Paginator(double capacity)
{
    // What rounding may add up to over a page.
    const double Tolerance = 0.01;

    readonly List<LaidPage> _pages = [];
    double _y;

    public static IReadOnlyList<LaidPage> Paginate(IReadOnlyList<Slice> slices, double capacity)
    {
        var paginator = new Paginator(capacity);
        paginator.NewPage(wholePage: false);
        for (int i = 0; i < slices.Count;)
        {
            int end = paginator.ClusterEnd(slices, i);
            paginator.Place(slices.Skip(i).Take(end - i).ToList());
            i = end;
        }
        return paginator._pages;
    }

    /// <summary>The slices that must go on one page: all that want to, or only those that have to, or just one.</summary>
    int ClusterEnd(IReadOnlyList<Slice> slices, int start)
    {
        // What no page could hold is torn already: its end runs on where it stands, instead of leaving the page before half empty.
        bool torn = start > 0 && slices[start - 1].KeepWithNext >= Keep.Together && !slices[start].NewPage;
        foreach (var least in torn ? new[] { Keep.Always } : [Keep.Together, Keep.Always])
        {
            int end = start;
            while (end < slices.Count - 1 && slices[end].KeepWithNext >= least && !slices[end + 1].NewPage) end++;
            var cluster = slices.Skip(start).Take(end - start + 1);
            if (Galley.Height(cluster) + (slices[start].Head?.Height ?? 0) <= capacity) return end + 1;
        }
        return start + 1;
    }

    void Place(List<Slice> cluster)
    {
        var first = cluster[0];
        if (first.WholePage)
        {
            NewPage(wholePage: true);
            Current.Add(first, 0);
            return;
        }
        double space = Current.IsEmpty ? 0 : first.SpaceBefore;
        if (first.NewPage || Current.WholePage || _y + space + Galley.Height(cluster) > capacity + Tolerance) NewPage(wholePage: false);
        foreach (var slice in cluster) Place(slice);
    }

    void Place(Slice slice)
    {
        if (!Current.IsEmpty)
        {
            if (_y + slice.SpaceBefore + slice.Height > capacity + Tolerance) NewPage(wholePage: false);
            else _y += slice.SpaceBefore;
        }
        if (Current.IsEmpty && slice.Head is { } head)
        {
            Current.AddHead(head, _y);
            _y += head.Height;
        }
        if (_y + slice.Height > capacity + Tolerance && slice.Split?.Invoke(capacity - _y) is { } parts)
        {
            Put(parts.First);
            NewPage(wholePage: false);
            Place(parts.Next with { Head = slice.Head, Frames = slice.Frames, SpaceBefore = 0 });
            return;
        }
        Put(slice);
    }

    void Put(Slice slice)
    {
        Current.Add(slice, _y);
        _y += slice.Height;
    }

    LaidPage Current => _pages[^1];

    /// <summary>An empty page is used rather than left blank.</summary>
    void NewPage(bool wholePage)
    {
        if (_pages.Count > 0 && Current.IsEmpty) _pages.RemoveAt(_pages.Count - 1);
        _pages.Add(new LaidPage(wholePage));
        _y = 0;
    }
}
