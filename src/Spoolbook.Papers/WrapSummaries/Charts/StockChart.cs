using Spoolbook.Film;
using Spoolbook.Papers.Pictures;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Forecasts;

namespace Spoolbook.Papers.WrapSummaries.Charts;

/// <summary>
/// Film left, evening by evening, and the forecast for the evenings to come: a band from what is left in half of all
/// draws to what is left in 95 % of them. Below zero, film is missing.
/// </summary>
sealed class StockChart
{
    readonly FilmForecast _forecast;
    readonly PaperFormat _format;
    readonly ChartSize _size;
    readonly SvgWriter _svg = new();
    readonly Footage _received;
    readonly string _receivedText;
    readonly string _tonight;
    readonly List<StockDay> _evenings;
    readonly ChartScale _across;
    readonly ChartScale _up;

    StockChart(Books books, List<StockDay> evenings, PaperFormat format, ChartSize size)
    {
        (_forecast, _format, _size, _evenings) = (books.Forecast, format, size, evenings);
        _received = books.Stock.Counted.Aggregate(Footage.Zero, (sum, lot) => sum + lot.Received);
        _receivedText = format.Words.Fill("chart-stock-received", ("film", format.AccountWithUnit(_received, books.Metric.Stock.Received)));
        _tonight =
            evenings[^1].Left == books.Stock.Left
                ? format.AccountWithUnit(books.Stock.Left, books.Metric.Stock.Left)
                : format.LengthWithUnit(evenings[^1].Left);
        var right = Labels().Select(l => size.WidthOf(l.Text)).DefaultIfEmpty(size.WidthOf(_tonight, bold: true)).Max() + 8;
        var least = _forecast.Days.IsEmpty ? 0 : Units(Likely(_forecast.Days[^1], FilmForecast.Percents.Length - 1));
        var most = evenings.Max(e => Units(e.Left));
        _up = new ChartScale(
            Math.Min(least, Math.Min(0, evenings.Min(e => Units(e.Left)))),
            Math.Max(1, Math.Max(most, Units(_received))),
            Height - (2 * size.Line),
            2 * size.Line
        );
        var left = Marks().Max(m => size.WidthOf(m.Label)) + 6;
        _across = new ChartScale(0, evenings.Count + _forecast.Days.Length, left, size.Width - right);
    }

    double Height => _size.IsNarrow ? 210 : 190;

    int Today => _evenings.Count;

    /// <summary>The chart; null where no stock came, or nothing has been loaded or shot yet.</summary>
    public static string? Draw(Books books, PaperFormat format, PictureWidth width)
    {
        var evenings = Evenings(books);
        return evenings.Count == 0 || books.Forecast.Input.Unit is null
            ? null
            : new StockChart(books, evenings, format, ChartSize.Of(width)).Draw();
    }

    // Up to the last day on which film was loaded, shot, or came and went since; a day of the forecast is ahead of it.
    static List<StockDay> Evenings(Books books)
    {
        if (books.Forecast.Input.LastDay is not { } shot)
        {
            return [];
        }

        var days = books.Stock.Days;
        var next = books.Forecast.Days.Select(d => d.On).OfType<DateOnly>().DefaultIfEmpty(DateOnly.MaxValue).Min();
        var moved = days.Zip(days.Skip(1)).Where(p => p.First.Left != p.Second.Left).Select(p => p.Second.On).Where(d => d < next);
        var last = moved.Append(shot).Max();
        return [.. days.Where(d => d.On <= last)];
    }

    string Draw()
    {
        Grid();
        Band();
        History();
        Dates();
        PlaceLabels();
        return _svg.Finish(_size.Width, Height, _format.Words["chart-stock"], string.Join(" ", Description()));
    }

    void Grid()
    {
        foreach (var (mark, label) in Marks())
        {
            _svg.Line(
                _across.Start,
                _up.At(mark),
                _across.End,
                _up.At(mark),
                stroke: mark == 0 ? SvgWriter.Ink : "#bbbbbb",
                strokeWidth: mark == 0 ? 1 : 0.5
            );
            _size.Write(_svg, _across.Start - 4, _up.At(mark) + (_size.Type * 0.35), label, "end");
        }
    }

    IEnumerable<(double Mark, string Label)> Marks() =>
        _up.Marks(2.2 * _size.Line).Select(m => (m, _format.Plain(m) + (m == 0 ? _format.RulerUnitName : "")));

    void Band()
    {
        if (_forecast.Days.IsEmpty)
        {
            return;
        }

        _svg.Polygon([.. Ahead(0), .. Ahead(FilmForecast.Percents.Length - 1).Reverse()], "#dddddd");
        foreach (var (i, dashes) in new[] { "5 2", null, "1 2" }.Index())
        {
            _svg.Polyline(Ahead(i), 1, dashes);
        }

        _svg.Line(_across.At(Today), _up.End, _across.At(Today), _up.Start, strokeWidth: 0.4, dashes: "2 2");
    }

    // From tonight's stock on, along what a percentage of draws leaves at least.
    IEnumerable<(double X, double Y)> Ahead(int percent) =>
        [
            (_across.At(Today), _up.At(Units(_forecast.Input.Stock))),
            .. _forecast.Days.Select((d, i) => (_across.At(Today + 1 + i), _up.At(Units(Likely(d, percent))))),
        ];

    void History()
    {
        (double X, double Y)[] points =
        [
            (_across.At(0), _up.At(Units(_received))),
            .. _evenings.Select((e, i) => (_across.At(i + 1), _up.At(Units(e.Left)))),
        ];
        _svg.Polyline(points, 2);
        Beside(points[0], _receivedText, bold: false, points[1].Y < points[0].Y);
        if (points[^1].X > points[0].X + _size.WidthOf(_receivedText) + 10 || points[^1].Y > points[0].Y + _size.Line)
        {
            Beside(points[^1], _tonight, bold: true);
        }
    }

    // Where film only gets less, there is room above a line to its right; where some came, below it.
    void Beside((double X, double Y) point, string text, bool bold, bool rises = false) =>
        _size.WriteClear(_svg, point.X + 4, rises ? point.Y + _size.Line : point.Y - 4, text, bold);

    void Dates()
    {
        var names = Enumerable.Range(1, Today + _forecast.Days.Length).ToDictionary(i => i, i => _size.WidthOf(DayAt(i), bold: true));
        var each = (_across.End - _across.Start) / names.Count;
        var step = Math.Max(1, (int)Math.Ceiling((names.Values.Max() + 6) / each));
        foreach (var i in names.Keys)
        {
            var named = (i - Today) % step == 0;
            _svg.Line(_across.At(i), _up.Start, _across.At(i), _up.Start + (named ? 4 : 2), strokeWidth: 0.4);
            if (named)
            {
                _size.Write(_svg, _across.At(i), _up.Start + 4 + _size.Type, DayAt(i), "middle", bold: i == Today);
            }
        }
    }

    string DayAt(int index) =>
        index <= Today ? _format.DateShort(_evenings[index - 1].On)
        : _forecast.Days[index - Today - 1] is { On: { } on } ? _format.DateShort(on)
        : "+" + PaperFormat.Number(index - Today);

    void PlaceLabels()
    {
        var labels = Labels().Select(l => (l.Text, Y: _up.At(Units(l.Left)))).OrderBy(l => l.Y).ToList();
        var at = labels.Select(l => l.Y).ToArray();

        // Down as far as they push each other, and up again from the foot.
        for (var i = 1; i < at.Length; i++)
        {
            at[i] = Math.Max(at[i], at[i - 1] + _size.Line);
        }

        for (var i = at.Length - 1; i >= 0; i--)
        {
            at[i] = Math.Min(at[i], i == at.Length - 1 ? _up.Start - (_size.Type * 0.5) : at[i + 1] - _size.Line);
            _size.Write(_svg, _across.End + 4, at[i] + (_size.Type * 0.35), labels[i].Text);
        }
    }

    IEnumerable<(string Text, Footage Left)> Labels() =>
        from day in _forecast.Days.TakeLast(1)
        from percent in FilmForecast.Percents.Index()
        let left = Likely(day, percent.Index)
        select (
            _format.Words.Fill(
                left < Footage.Zero ? "chart-stock-short" : "chart-stock-left",
                ("percent", PaperFormat.Number(percent.Item)),
                ("film", left < Footage.Zero ? _format.LengthRoundedUp(Footage.Zero - left) : _format.LengthRoundedDown(left))
            ),
            left
        );

    Footage Likely(ForecastDay day, int percent) => _forecast.Input.Stock - day.Needed[percent];

    double Units(Footage film) => ChartScale.Units(film, _format);

    IEnumerable<string> Description()
    {
        yield return _receivedText + ".";
        foreach (var evening in _evenings)
        {
            yield return _format.Words.Fill(
                "chart-stock-evening",
                ("day", _format.Date(evening.On)),
                ("film", _format.LengthWithUnit(evening.Left))
            );
        }

        foreach (var day in _forecast.Days)
        {
            yield return _format.Words.Fill(
                "chart-stock-ahead",
                ("day", day.On is { } on ? _format.Date(on) : _format.Count(day.Ahead, "forecast-day")),
                ("half", _format.LengthRoundedUp(day.Needed[0])),
                ("eighty", _format.LengthRoundedUp(day.Needed[1])),
                ("most", _format.LengthRoundedUp(day.Needed[2]))
            );
        }
    }
}
