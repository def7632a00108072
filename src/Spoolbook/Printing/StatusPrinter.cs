using System.Globalization;
using Spoolbook.Film;
using Spoolbook.Shoot;
using Spoolbook.Shoot.Accounts;

namespace Spoolbook.Printing;

/// <summary>
/// Where everything is, for people: what is in the cameras first, since that is what a question on set is about. On a narrow screen
/// the figures of the rolls go but for what is left.
/// </summary>
internal sealed class StatusPrinter
{
    const int Wide = 72,
        Figure = 7,
        MostWidth = 100;

    readonly CheckedProduction _found;
    readonly Books _books;
    readonly FilmText _film;
    readonly Ink _ink;
    readonly TextWriter _out;
    readonly int _width;

    StatusPrinter(CheckedProduction found, CommandEnvironment around)
    {
        (_found, _books, _ink, _out) = (found, found.Books!, new Ink(around.Colour), around.Out);
        _film = new FilmText(_books.Production);
        _width = Math.Min(around.Width, MostWidth);
    }

    public static void Print(CheckedProduction found, DateOnly today, CommandEnvironment around)
    {
        var status = new StatusPrinter(found, around);
        status.Head(today);
        status.Cameras();
        status.Rolls();
        status.Stock();
        status.Shots();
        status.Check();
    }

    void Head(DateOnly today)
    {
        _out.WriteLine(_ink.Bold(Cut($"{_books.Production.Code.Value}  {Plain.Escaped(_books.Production.Title.Value)}", _width)));
        if (_books.Stock.DayAt(today) is not { } day)
        {
            Wrapped("", ["Nothing exposed yet."], " ");
            return;
        }

        var name = day.On == today ? "Today" : day.On.ToString("ddd d MMM", CultureInfo.InvariantCulture);
        var tally = day.Use.Tally;
        Wrapped(
            "",
            [
                $"{name}{(day.Day is { } shooting ? $", day {shooting.Number.Value.ToString(CultureInfo.InvariantCulture)}" : "")}:",
                $"{_film.WithUnit(tally.Exposed)} exposed,",
                $"{_film.Of(tally.Good)} good,",
                Plain.Count(day.Use.Takes, "take"),
            ],
            " "
        );
    }

    void Cameras()
    {
        if (_books.Cameras.Cameras.IsEmpty)
        {
            return;
        }

        Heading("In the camera");
        var names = _books.Cameras.Cameras.Select(c => Plain.Escaped(c.Body ?? "?")).ToList();
        var width = Math.Min(names.Max(n => n.Length), 10);
        foreach (var (camera, name) in _books.Cameras.Cameras.Zip(names))
        {
            var what =
                camera.Roll is not { } roll ? _ink.Dim("empty")
                : camera.Left is { } left
                    ? $"{_ink.Bold(Plain.Escaped(roll.Name.Value))}, {_film.Of(left)} of {_film.WithUnit(camera.Book!.Strip.Loaded)} left"
                : $"{_ink.Bold(Plain.Escaped(roll.Name.Value))}, length not known";
            _out.WriteLine($"  {Cut(name, width).PadRight(width)}  {what}");
        }
    }

    void Rolls()
    {
        var rolls = _books.Shoot.Counted.ToList();
        if (rolls.Count == 0)
        {
            return;
        }

        var isWide = _width >= Wide;
        string[] heads = isWide ? ["good", "hold", "ng", "waste", "left"] : ["left"];
        var name = Math.Clamp(rolls.Max(r => r.Roll.Name.Value.Length), 3, 10);
        var figures = rolls.Append(null).SelectMany(r => Figures(r, isWide)).Max(f => f.Length);
        var figure = Math.Max(figures, isWide ? 5 : 4);
        var bar = Math.Max(_width - 2 - name - 2 - (heads.Length * (figure + 1)), 6);
        var title = $"Rolls, {_film.Unit}";
        _out.WriteLine();
        _out.WriteLine(_ink.Bold(title.PadRight(2 + name + 2 + bar)) + string.Concat(heads.Select(h => " " + _ink.Dim(h.PadLeft(figure)))));
        var longest = rolls.Max(r => r.Strip.Loaded);
        foreach (var roll in rolls)
        {
            Line(
                Cut(Plain.Escaped(roll.Roll.Name.Value), name).PadRight(name),
                FilmBar.Of(roll.Tally, longest, bar, _ink),
                Figures(roll, isWide)
            );
        }

        if (rolls.Count > 1)
        {
            Line(
                _ink.Dim("all".PadRight(name)),
                FilmBar.Of(_books.Shoot.Total, _books.Shoot.Total.Loaded, bar, _ink),
                Figures(null, isWide)
            );
        }

        void Line(string of, string film, string[] numbers) =>
            _out.WriteLine($"  {of}  {film}{string.Concat(numbers.Select(n => " " + n.PadLeft(figure)))}".TrimEnd());
    }

    // Of a roll, or of all of them.
    string[] Figures(RollBook? roll, bool isWide)
    {
        var tally = roll?.Tally ?? _books.Shoot.Total;
        var metric = roll is null ? _books.Metric.Total : _books.Metric.Of(roll);
        var left = Text(tally.ShortEnd, metric.ShortEnd);
        return isWide
            ?
            [
                Text(tally.Good, metric.Good),
                Text(tally.Hold, metric.Hold),
                Text(tally.NoGood, metric.NoGood),
                Text(tally.Waste, metric.Waste),
                left,
            ]
            : [left];

        string Text(Footage length, long centimetres) => length == Footage.Zero ? "-" : _film.Account(length, centimetres);
    }

    void Stock()
    {
        var kinds = _books.Stock.Kinds.ToList();
        if (kinds.Count == 0)
        {
            return;
        }

        Heading("Stock left");
        foreach (var kind in kinds)
        {
            string[] parts =
            [
                .. kind.Unopened > 0 ? (string[])[Plain.Count(kind.Unopened, "can")] : [],
                .. kind.ShortEndCans > 0 ? (string[])[$"{Plain.Count(kind.ShortEndCans, "short end")} ({_film.Of(kind.ShortEnds)})"] : [],
                .. kind.InCamera > Footage.Zero ? (string[])[$"{_film.Of(kind.InCamera)} in the camera"] : [],
            ];
            Wrapped(
                $"  {Plain.Escaped(kind.Name)}: ",
                [_ink.Bold(_film.WithUnit(kind.Left)), .. parts.Select((p, i) => i == 0 ? "= " + p : "+ " + p)],
                " "
            );
        }

        if (kinds.Count > 1)
        {
            Wrapped("  All: ", [_ink.Bold(_film.WithUnit(_books.Stock.Left))], " ");
        }
    }

    void Shots()
    {
        var coverage = _books.Coverage;
        if (coverage.Left is not { } left)
        {
            return;
        }

        var listed = coverage.ListedOnce.Count();
        Heading($"Shots: {listed - left.Length} of {listed} got");
        Scenes("to get ", left);
        Scenes("got    ", coverage.ListedOnce.Where(s => s.IsGot));
    }

    // Scene by scene, its letters after it: forty scenes are a few lines.
    void Scenes(string what, IEnumerable<CoveredShot> shots)
    {
        string[] scenes =
        [
            .. shots
                .GroupBy(s => s.Planned?.Scene.Value ?? s.Name, StringComparer.Ordinal)
                .Select(g => Plain.Escaped($"{g.Key} {Letters([.. g])}".TrimEnd())),
        ];
        if (scenes.Length > 0)
        {
            Wrapped($"  {what} ", scenes, "  ");
        }
    }

    static string Letters(IReadOnlyList<CoveredShot> shots)
    {
        var letters = shots.Select(s => (s.Planned?.Shot?.Value ?? "") + (!s.IsGot && s.HasHeld ? "(H)" : "")).ToList();
        return string.Join(letters.Any(l => l.Length > 1) ? "," : "", letters);
    }

    void Check()
    {
        _out.WriteLine();
        var counts = FindingText.Count(_found.Findings);
        var painted = _found.HasErrors ? _ink.Red(counts) : counts;
        Wrapped("", [$"Check: {painted}.", .. _found.Findings.IsEmpty ? (string[])[] : [_ink.Dim("(spoolbook check)")]], " ");
    }

    void Heading(string text)
    {
        _out.WriteLine();
        _out.WriteLine(_ink.Bold(Cut(text, _width)));
    }

    // Words that go on under the first of them.
    void Wrapped(string lead, IReadOnlyList<string> words, string between)
    {
        lead = lead.Length > _width ? Cut(lead.TrimEnd(), _width) : lead;
        var indent = Math.Min(lead.Length, 10);
        var (line, at) = (lead, lead.Length);
        var isFirst = true;
        foreach (var word in words)
        {
            var width = Ink.WidthOf(word);
            if (at > indent && at + (isFirst ? 0 : between.Length) + width > _width)
            {
                _out.WriteLine(line.TrimEnd());
                (line, at, isFirst) = (new string(' ', indent), indent, true);
            }

            line += (isFirst ? "" : between) + word;
            at += (isFirst ? 0 : between.Length) + width;
            isFirst = false;
        }

        _out.WriteLine(line.TrimEnd());
    }

    static string Cut(string text, int width) => text.Length <= width ? text : text[..(width - 1)] + "…";
}
