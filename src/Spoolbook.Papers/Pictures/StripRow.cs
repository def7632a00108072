using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;
using Spoolbook.Shoot.Walks;

namespace Spoolbook.Papers.Pictures;

/// <summary>A stretch of a roll in one row: a lane for each exposure of the same film, the account below, and the ruler.</summary>
sealed class StripRow
{
    const double LaneHeight = 11.5;
    const double BandHeight = 9.5;
    const double LabelHeight = 8;
    const double RulerHeight = 11.5;
    const double TwiceBand = 8.5;
    const double LaneGap = 2;
    const double GoodStroke = 1.5;
    const double NameSize = SvgWriter.TypeSize;

    // The lowest lane that a number can be read in.
    const double LowLane = 9.6;

    readonly Strip _strip;
    readonly Span _span;
    readonly double _left;
    readonly double _width;
    readonly PaperFormat _format;
    readonly ImmutableArray<Lane> _lanes;
    readonly string? _name;
    readonly double _laneHeight;

    StripRow(
        Strip strip,
        Span span,
        double left,
        double width,
        PaperFormat format,
        ImmutableArray<Lane> lanes,
        string? name = null,
        double laneHeight = LaneHeight
    ) => (_strip, _span, _left, _width, _format, _lanes, _name, _laneHeight) = (strip, span, left, width, format, lanes, name, laneHeight);

    sealed record Lane(int Exposure, ImmutableArray<Layer> Takes, ImmutableArray<PlacedLabel> Labels)
    {
        public double LabelsHeight => Labels.IsEmpty ? 0 : Labels.Max(l => l.Level) * LabelHeight;
    }

    public double Height => _lanes.Sum(HeightOf) + TwiceHeight + BandHeight + RulerHeight;

    // The row above the film that says where it was exposed more than once.
    double TwiceHeight => Runs(IsTwice).Any() ? TwiceBand : 0;

    double HeightOf(Lane lane) => lane.LabelsHeight + _laneHeight + (_name is null || _lanes.Length > 1 ? LaneGap : LaneGap / 2);

    /// <summary>
    /// The whole roll in a low row. A take without room for its slate has its number in the report; where lanes are low,
    /// since film was exposed more than once, every take has.
    /// </summary>
    public static StripRow Brief(RollBook roll, IReadOnlyDictionary<Layer, int> exposures, double left, double width, PaperFormat format)
    {
        var whole = new Span(Footage.Zero, roll.Strip.Loaded);
        var perFrame = width / Math.Max(1, whole.Length.Frames);
        var lanes = roll.Strip.Layers.GroupBy(l => exposures[l]).OrderBy(e => e.Key).ToList();
        return new StripRow(
            roll.Strip,
            whole,
            left,
            width,
            format,
            [
                .. lanes.Select(same => new Lane(
                    same.Key,
                    [.. same.OrderBy(l => l.Span.From.Frames)],
                    TakeLabels.Inside(
                        same.Where(t => !t.Span.IsEmpty)
                            .Select(t => LabelOf(roll.Strip, t, t.Span.Intersect(whole), whole, perFrame, format, byNumber: true)),
                        width
                    )
                )),
            ],
            roll.Roll.Name.Value,
            lanes.Count > 1 ? LowLane : LaneHeight
        );
    }

    /// <summary>The row, or null where its labels do not fit.</summary>
    /// <param name="left">Where the film starts, right of the lanes' names.</param>
    /// <param name="width">The width of a full row; the roll's last row may have less film.</param>
    /// <param name="exposures">Which exposure of its film each take is.</param>
    /// <param name="byNumber">Whether a take without room for its slate has the number of its line in the report.</param>
    /// <param name="takesAll">Whether to leave out labels that do not fit.</param>
    public static StripRow? TryLayOut(
        Strip strip,
        IReadOnlyDictionary<Layer, int> exposures,
        Span span,
        double left,
        double width,
        PaperFormat format,
        bool byNumber,
        bool takesAll
    )
    {
        var perFrame = width / span.Length.Frames;
        var lanes = ImmutableArray.CreateBuilder<Lane>();
        foreach (var same in strip.Layers.Where(l => l.Span.Overlaps(span)).GroupBy(l => exposures[l]).OrderBy(e => e.Key))
        {
            ImmutableArray<Layer> takes = [.. same.OrderBy(l => l.Span.From.Frames)];
            var labels = takes
                .Where(t => !t.Span.IsEmpty)
                .Select(t => LabelOf(strip, t, t.Span.Intersect(span), span, perFrame, format, byNumber))
                .ToList();
            var placed = TakeLabels.Place(labels, width);
            if (placed is null && !takesAll)
            {
                return null;
            }

            lanes.Add(new Lane(same.Key, takes, placed ?? TakeLabels.Inside(labels, width)));
        }

        return new StripRow(strip, span, left, width, format, lanes.ToImmutable(), laneHeight: lanes.Count > 1 ? LowLane : LaneHeight);
    }

    public void Draw(SvgWriter svg, double top)
    {
        foreach (var lane in _lanes)
        {
            DrawLane(svg, lane, top);
            top += HeightOf(lane);
        }

        foreach (var (first, span) in Runs(IsTwice))
        {
            var box = BoxOf(span, top, TwiceBand);
            Patterns.Draw(svg, box, Pattern.Twice);
            Plate(svg, box, Often(first), 6, Legend.Times(first), 4);
        }

        top += TwiceHeight;
        foreach (var segment in _strip.SegmentsOver(_span))
        {
            var box = BoxOf(segment.Span, top, BandHeight);
            Patterns.Draw(svg, box, Patterns.Of(segment));
            if (!IsFog(segment))
            {
                Name(svg, segment, box);
            }
        }

        foreach (var (segment, span) in Runs(IsFog))
        {
            Name(svg, segment, BoxOf(span, top, BandHeight));
        }

        svg.Text(_left - 3, top + BandHeight - 2.2, _name ?? _format.Words["picture-film"], "end", bold: _name is not null);
        Ruler.Draw(svg, _span, X, top + BandHeight, _format);
    }

    static bool IsFog(Segment segment) => segment.Cause == WasteCause.Fog;

    static bool IsTwice(Segment segment) => segment.Layers.Length > 1;

    string Often(Segment segment) =>
        segment.Layers.Length == 2
            ? _format.Words["strip-exposed-twice"]
            : _format.Words.Fill("strip-exposed-often", ("n", PaperFormat.Number(segment.Layers.Length)));

    // Light fell on one stretch of film, whichever takes it had: it is named once, over all of it. So is what was exposed as often.
    IEnumerable<(Segment First, Span Span)> Runs(Func<Segment, bool> isSo)
    {
        (Segment First, Span Span)? run = null;
        foreach (var segment in _strip.SegmentsOver(_span).Where(isSo))
        {
            if (
                run is { } begun
                && begun.Span.To == segment.Span.From
                && (IsFog(segment) || begun.First.Layers.Length == segment.Layers.Length)
            )
            {
                run = (begun.First, new Span(begun.Span.From, segment.Span.To));
                continue;
            }

            if (run is { } whole)
            {
                yield return whole;
            }

            run = (segment, segment.Span);
        }

        if (run is { } last)
        {
            yield return last;
        }
    }

    /// <summary>What a lane is called: <c>exp. 2</c>.</summary>
    public static string NameOf(int exposure, PaperFormat format) =>
        format.Words.Fill("picture-exposure", ("n", PaperFormat.Number(exposure)));

    // A take of which all film counts as another take's worse mark says both marks, and does not look good. The circle of a take that
    // is to be scanned is in its shortest label too: to a lab, a take without one is not wanted.
    static Label LabelOf(Strip strip, Layer take, Span shown, Span row, double perFrame, PaperFormat format, bool byNumber)
    {
        var (worse, mark) = (WorstMark(strip, take), format.Mark(take.Take.Mark.Value));
        var circle = format.IsPicked(take.Take.Mark.Value) ? mark : "";
        return new(
            $"{take.Take.Slate} {mark}{(worse is { } counted ? " → " + format.Mark(counted) : "")}",
            take.Take.Slate + circle,
            byNumber ? PaperFormat.Number(take.Index + 1) + circle : null,
            take.Take.Mark.Value == Mark.Good && worse is null,
            ((shown.From - row.From).Frames + (shown.Length.Frames / 2.0)) * perFrame,
            shown.Length.Frames * perFrame
        );
    }

    // The worse mark of all the take's film; null where some of it counts as it is marked.
    static Mark? WorstMark(Strip strip, Layer take)
    {
        var worse = strip.CountedWorse(take).ToList();
        return worse.Count > 0 && worse.Sum(w => w.Span.Length.Frames) == take.Span.Length.Frames
            ? worse.Max(w => w.By.Take.Mark.Value)
            : null;
    }

    void DrawLane(SvgWriter svg, Lane lane, double top)
    {
        var laneTop = top + lane.LabelsHeight;
        if (_name is null || _lanes.Length > 1)
        {
            svg.Text(
                _left - 3,
                laneTop + (_laneHeight / 2) + 2.55,
                _lanes.Length == 1 && lane.Exposure == 1 ? _format.Words["picture-takes"] : NameOf(lane.Exposure, _format),
                "end"
            );
        }

        svg.Line(_left, laneTop + _laneHeight, _left + _width, laneTop + _laneHeight, strokeWidth: 0.25);
        foreach (var label in lane.Labels.Where(l => l.Level > 0))
        {
            var x = _left + label.Label.At;
            svg.Line(x, laneTop - ((label.Level - 1) * LabelHeight) - 1.5, x, laneTop, strokeWidth: 0.3);
        }

        foreach (var take in lane.Takes)
        {
            DrawTake(svg, take, laneTop);
        }

        foreach (var label in lane.Labels)
        {
            DrawLabel(svg, label, laneTop);
        }
    }

    void DrawTake(SvgWriter svg, Layer take, double top)
    {
        var box = BoxOf(take.Span, top, _laneHeight);
        if (take.Take.Mark.Value == Mark.Good && WorstMark(_strip, take) is null)
        {
            var inner = Math.Min(GoodStroke, box.Width);
            svg.Rect(
                new Box(box.X + (inner / 2), box.Y + (GoodStroke / 2), box.Width - inner, box.Height - GoodStroke),
                "#ffffff",
                strokeWidth: inner
            );
        }
        else
        {
            svg.Rect(box, "#ffffff", strokeWidth: 0.5);
        }

        foreach (var (span, by) in _strip.CountedWorse(take).Where(w => w.Span.Overlaps(_span)))
        {
            Patterns.Draw(svg, BoxOf(span, top, _laneHeight), by.Take.Mark.Value == Mark.Hold ? Pattern.Hold : Pattern.NoGood);
        }

        Wedge(svg, take.Opening.Intersect(take.Span), take.Opening, top, opens: true);
        Wedge(svg, take.Closing.Intersect(take.Span), take.Closing, top, opens: false);
    }

    // The dark part of the picture: from all of it to nothing in a fade in.
    void Wedge(SvgWriter svg, Span onTake, Span fade, double top, bool opens)
    {
        var shown = onTake.Intersect(_span);
        if (shown.IsEmpty)
        {
            return;
        }

        double Dark(Footage at)
        {
            var open = (at - fade.From).Frames / (double)fade.Length.Frames;
            return top + (_laneHeight * (opens ? 1 - open : open));
        }

        svg.Polygon(
            [(X(shown.From), top), (X(shown.To), top), (X(shown.To), Dark(shown.To)), (X(shown.From), Dark(shown.From))],
            Patterns.Wedge
        );
    }

    void DrawLabel(SvgWriter svg, PlacedLabel label, double laneTop)
    {
        var x = _left + label.Left;
        var baseline = label.Level == 0 ? laneTop + (_laneHeight / 2) + 2.55 : laneTop - 2 - ((label.Level - 1) * LabelHeight);

        // A white plate sets the type off from the leaders and wedges behind it. It is as tall as a row of labels, so
        // that no speck of a leader shows between two of them.
        svg.Rect(
            label.Level == 0
                ? new Box(x - 0.7, laneTop + GoodStroke + 0.1, label.Width + 1.4, _laneHeight - (2 * GoodStroke) - 0.2)
                : new Box(x - 0.7, baseline - 6.4, label.Width + 1.4, LabelHeight),
            "#ffffff",
            "none"
        );
        svg.Text(x, baseline, label.Text, bold: label.Label.Bold);
    }

    // The word where there is room, else its letter: a fax keeps it where it spoils the pattern.
    void Name(SvgWriter svg, Segment segment, Box box)
    {
        var (word, letter) = segment.Account switch
        {
            Account.Good => (_format.Words["good"], _format.Words["mark-good"]),
            Account.Hold => (_format.Words["hold"], _format.Words["mark-hold"]),
            Account.NoGood => (_format.Words["no-good"], _format.Words["mark-ng"]),
            // What is not shot yet has no letter: where its word is too long, nothing is left to shoot with.
            Account.ShortEnd when _strip.Roll.Unload is null => (_format.Words["not-shot-yet"], _format.Words["not-shot-yet"]),
            Account.ShortEnd => (_format.Words["short-end"], _format.Words["letter-short-end"]),
            _ => (_format.Cause(segment.Cause!.Value), _format.CauseLetter(segment.Cause.Value)),
        };
        // What spoils a good take is named however narrow it is: the fog in a take is its most costly part. Waste is named
        // by its letter alone, where a mark has a take above it that says the same.
        Plate(
            svg,
            box,
            word,
            10,
            letter,
            IsFog(segment) ? 0.5
                : segment.Account == Account.Waste ? 2
                : 3
        );
    }

    // On a white plate, each with so much room to spare. The plate leaves some of the pattern at both sides: film that shows white
    // alone is good film.
    static void Plate(SvgWriter svg, Box box, string word, double besideWord, string letter, double besideLetter)
    {
        foreach (var (text, beside) in new[] { (word, besideWord), (letter, besideLetter) })
        {
            var needs = SvgWriter.WidthOf(text, size: NameSize);
            if (needs + beside <= box.Width)
            {
                var x = box.X + ((box.Width - needs) / 2);
                var rim = Math.Clamp(((box.Width - needs) / 2) - 1.6, 0, 1);
                svg.Rect(new Box(x - rim, box.Y + 1.2, needs + (2 * rim), box.Height - 2.4), "#ffffff", "none");
                svg.Text(x, box.Y + (box.Height / 2) + 2.3, text, size: NameSize);
                return;
            }
        }
    }

    double X(Footage frame) => _left + (_width * (frame - _span.From).Frames / _span.Length.Frames);

    Box BoxOf(Span span, double top, double height)
    {
        var shown = span.Intersect(_span);
        return new Box(X(shown.From), top, X(shown.To) - X(shown.From), height);
    }
}
