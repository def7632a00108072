using System.Collections.Immutable;
using Spoolbook.Papers.Typesetting.Drawing;

namespace Spoolbook.Papers.Typesetting.Layout;

/// <summary>Slices one below the other, before they are cut into pages.</summary>
/// <param name="spacing">The share of the usual space between blocks: 1 on a page, less on a label.</param>
sealed class Galley(double spacing = 1)
{
    readonly List<Slice> _slices = [];
    double _space;
    bool _newPage;

    public IReadOnlyList<Slice> Slices => _slices;

    public int Count => _slices.Count;

    /// <summary>Requests space before the next slice; the largest request wins.</summary>
    public void Space(double points) => _space = Math.Max(_space, points * spacing);

    public void NewPage() => _newPage = true;

    public void Add(Slice slice)
    {
        var space = _slices.Count == 0 && !_newPage ? 0 : Math.Max(_space, slice.SpaceBefore);
        _slices.Add(slice with { SpaceBefore = space, NewPage = slice.NewPage || _newPage && _slices.Count > 0 });
        _space = 0;
        _newPage = false;
    }

    /// <summary>Changes the slices from this number on.</summary>
    public void Change(int from, Func<Slice, Slice> change)
    {
        for (var i = from; i < _slices.Count; i++)
        {
            _slices[i] = change(_slices[i]);
        }
    }

    /// <summary>Gives the slice of this number a name; nothing where nothing was set.</summary>
    public void Name(int slice, string name) => ChangeOne(slice, s => s with { Names = s.Names.Add(name) });

    /// <summary>Marks the slice of this number as the begin of a part; nothing where nothing was set.</summary>
    public void OpenPart(int slice) => ChangeOne(slice, s => s with { OpensPart = true });

    /// <summary>Marks the slice of this number as the paper's own heading; nothing where nothing was set.</summary>
    public void Title(int slice) => ChangeOne(slice, s => s with { IsTitle = true });

    void ChangeOne(int slice, Func<Slice, Slice> change)
    {
        if (slice < _slices.Count)
        {
            _slices[slice] = change(_slices[slice]);
        }
    }

    /// <summary>Requests that the slices from this number on stay on one page.</summary>
    public void KeepTogether(int from) => KeepTogether(from, _slices.Count);

    /// <summary>Requests that the slices from this number on, up to another, stay on one page.</summary>
    public void KeepTogether(int from, int to)
    {
        for (var i = from; i < to - 1; i++)
        {
            if (_slices[i].KeepWithNext == Keep.Free)
            {
                _slices[i] = _slices[i] with { KeepWithNext = _slices[i + 1].OpensPart ? Keep.Parts : Keep.Together };
            }
        }
    }

    public void KeepLastWithNext()
    {
        if (_slices.Count > 0)
        {
            _slices[^1] = _slices[^1] with { KeepWithNext = Keep.Always };
        }
    }

    public static double Height(IEnumerable<Slice> slices)
    {
        double height = 0;
        foreach (var slice in slices)
        {
            height += (height > 0 ? slice.SpaceBefore : 0) + slice.Height;
        }

        return height;
    }

    /// <summary>All pieces of some slices set below one another, with their frames, the top at zero.</summary>
    public static IEnumerable<MarkGroup> Pack(ImmutableArray<Slice> slices)
    {
        var tops = new List<(Slice Slice, double Top)>();
        double y = 0;
        foreach (var slice in slices)
        {
            if (tops.Count > 0)
            {
                y += slice.SpaceBefore;
            }

            tops.Add((slice, y));
            y += slice.Height;
        }
        foreach (var frame in Frames(tops))
        {
            yield return frame;
        }

        foreach (var (slice, top) in tops)
        {
            foreach (var piece in slice.Pieces)
            {
                yield return piece.Shift(0, top);
            }
        }
    }

    /// <summary>The frames of placed slices: outer ones first, so that inner ones are drawn over them.</summary>
    public static IEnumerable<MarkGroup> Frames(IReadOnlyList<(Slice Slice, double Top)> placed)
    {
        var spans = new List<(Frame Frame, double Top, double Bottom)>();
        foreach (var (slice, top) in placed)
        {
            foreach (var frame in slice.Frames)
            {
                var known = spans.FindIndex(span => ReferenceEquals(span.Frame, frame));
                if (known < 0)
                {
                    spans.Add((frame, top, top + slice.Height));
                }
                else
                {
                    spans[known] = spans[known] with { Bottom = top + slice.Height };
                }
            }
        }
        return spans.Select(span => span.Frame.Draw(span.Top, span.Bottom - span.Top));
    }
}
