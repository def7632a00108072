namespace Spoolbook.Papers.Typesetting.Layout;

/// <summary>
/// Cuts a galley into pages. No slice is lost: what should stay together does if a page can hold it, and a slice taller
/// than a page is split.
/// </summary>
/// <param name="capacity">The height of a page below its running head.</param>
/// <param name="headRoom">What a page gains that begins with the paper's own heading, and so has no running head.</param>
sealed class Paginator(double capacity, double headRoom)
{
    // What rounding errors can add up to over a page.
    const double Tolerance = 0.01;

    // A page that is less full than this looks unfinished: a section comes apart at a subheading instead.
    const double FullEnough = 2 / 3.0;

    readonly List<LaidPage> _pages = [];
    double _y;

    public static IReadOnlyList<LaidPage> Paginate(IReadOnlyList<Slice> slices, double capacity, double headRoom)
    {
        var paginator = new Paginator(capacity, headRoom);
        paginator.NewPage(wholePage: false);
        for (var i = 0; i < slices.Count;)
        {
            var end = paginator.ClusterEnd(slices, i);
            paginator.Place(slices.Skip(i).Take(end - i).ToList());
            i = end;
        }
        return paginator._pages;
    }

    /// <summary>The slices that go on one page: all that should, or only those that must, or just one.</summary>
    int ClusterEnd(IReadOnlyList<Slice> slices, int start)
    {
        // A part that no page can hold is split already. Its end runs on here, instead of leaving the page before half empty.
        var torn = start > 0 && slices[start - 1].KeepWithNext >= Keep.Together && !slices[start].NewPage;
        // Once a section has come apart, each of its parts goes where it has room.
        var apart = start > 0 && slices[start - 1].KeepWithNext == Keep.Parts;
        Keep[] levels =
            torn ? [Keep.Always]
            : apart ? [Keep.Together, Keep.Always]
            : [Keep.Parts, Keep.Together, Keep.Always];
        foreach (var least in levels)
        {
            var end = start;
            while (end < slices.Count - 1 && slices[end].KeepWithNext >= least && !slices[end + 1].NewPage)
            {
                end++;
            }

            var height = Galley.Height(slices.Skip(start).Take(end - start + 1));
            var leavesWhite = least == Keep.Parts && _y < FullEnough * capacity && _y + slices[start].SpaceBefore + height > capacity;
            if (!leavesWhite && height + (slices[start].Head?.Height ?? 0) <= capacity)
            {
                return end + 1;
            }
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
        var space = Current.IsEmpty ? 0 : first.SpaceBefore;
        if (first.NewPage || Current.WholePage || _y + space + Galley.Height(cluster) > capacity + Tolerance)
        {
            NewPage(wholePage: false);
        }

        if (Current.IsEmpty && first.IsTitle)
        {
            _y = -headRoom;
        }

        foreach (var slice in cluster)
        {
            Place(slice);
        }
    }

    void Place(Slice slice)
    {
        if (!Current.IsEmpty)
        {
            if (_y + slice.SpaceBefore + slice.Height > capacity + Tolerance)
            {
                NewPage(wholePage: false);
            }
            else
            {
                _y += slice.SpaceBefore;
            }
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

    /// <summary>Uses an empty page rather than leaving it blank.</summary>
    void NewPage(bool wholePage)
    {
        if (_pages.Count > 0 && Current.IsEmpty)
        {
            _pages.RemoveAt(_pages.Count - 1);
        }

        _pages.Add(new LaidPage(wholePage));
        _y = 0;
    }
}
