using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Departments;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Papers.Terms;

/// <summary>The tables of a term, of figures that the productions' own books have.</summary>
sealed class TermTables
{
    readonly DepartmentBook _book;
    readonly Production _school;
    readonly Translations _words;
    readonly PaperFormat _format;

    TermTables(DepartmentBook book, Production school, Translations words) =>
        (_book, _school, _words, _format) = (book, school, words, new PaperFormat(school, words));

    /// <param name="school">The school as a production without rolls: its units and its language.</param>
    public static ImmutableArray<TermTable> Of(DepartmentBook book, Production school, Translations words)
    {
        var tables = new TermTables(book, school, words);
        return [tables.Help(), tables.Loans(), tables.Stock(), tables.Film(), tables.Waste(), tables.Found(), tables.AtLab()];
    }

    TermTable Help() =>
        new(
            "help",
            _words["term-help"],
            _words["term-no-productions"],
            [
                new(_words["term-production"]),
                new(_words["term-why"]),
                new(_words["term-errors"], true),
                new(_words["term-warnings"], true),
                new(_words["term-shots"], true),
                new(_words["term-cost"], true),
                new(_words["term-budget-left"], true),
            ],
            [
                .. _book
                    .Shares.Select(s => (Share: s, Why: WhyOf(s).ToList()))
                    .OrderByDescending(s => s.Share.Count(Level.Error))
                    .ThenByDescending(s => s.Why.Count)
                    .ThenByDescending(s => s.Share.Count(Level.Warning))
                    .ThenBy(s => s.Share.Name, StringComparer.Ordinal)
                    .Select(s => new TermRow(
                        [
                            Production(s.Share),
                            new(string.Join("; ", s.Why)),
                            Number(s.Share.Count(Level.Error)),
                            Number(s.Share.Count(Level.Warning)),
                            new(
                                s.Share.ShotsListed is { } listed ? $"{s.Share.ShotsGot} / {listed}" : $"{s.Share.ShotsGot}",
                                s.Share.ShotsGot
                            ),
                            Money(s.Share.Cost, s.Share.Currency),
                            Money(_book.BudgetLeft(s.Share), s.Share.Currency),
                        ],
                        s.Why.Count > 0
                    )),
            ]
        );

    IEnumerable<string> WhyOf(ProductionShare share)
    {
        if (share.Count(Level.Error) is > 0 and var errors)
        {
            yield return _format.Count(errors, "term-why-error");
        }

        foreach (var kind in share.Stock.Where(k => k.Lacking > Footage.Zero))
        {
            yield return _words.Fill("term-why-lacks", ("film", FormatOf(share.Gauge).LengthWithUnit(kind.Lacking)), ("stock", kind.Stock));
        }

        foreach (var loan in _book.Department.Loans.Where(l => l.IsOverdue(_book.Today) && share.IsNamed(l.To.Value)))
        {
            yield return _words.Fill("term-why-overdue", ("piece", loan.Piece.Value));
        }

        if (_book.BudgetLeft(share) is < 0)
        {
            yield return _words["term-why-budget"];
        }
    }

    TermTable Loans() =>
        new(
            "loans",
            _words["term-loans"],
            _words["term-no-loans"],
            [new(_words["piece"]), new(_words["term-production"]), new(_words["went-out"]), new(_words["due-back"])],
            [
                .. _book.OutNow.Select(l => new TermRow(
                    [
                        new(l.Piece.Value),
                        _book.Named(l.To.Value) is { } share ? Production(share) : new(l.To.Value),
                        new(_format.Date(l.Out.Value)),
                        new(_format.Date(l.Back.Value)),
                    ],
                    l.IsOverdue(_book.Today)
                )),
            ]
        );

    TermTable Stock() =>
        new(
            "stock",
            _words["term-stock"],
            _words["term-no-stock"],
            [
                new(_words["stock"]),
                new(_words["term-on-shelf"], true),
                new(_words["term-in-productions"], true),
                new(_words["term-lacking"], true),
                new(_words["term-short-next-week"], true),
            ],
            [
                .. _book.Stock.Select(s => new TermRow(
                    [
                        new(s.Stock),
                        Film(s.Gauge, s.OnShelf),
                        Film(s.Gauge, s.InProductions),
                        Film(s.Gauge, s.Lacking),
                        Film(s.Gauge, s.ShortNextWeek),
                    ],
                    s.ShortNextWeek > Footage.Zero
                )),
            ]
        );

    TermTable Film() =>
        new(
            "film",
            _words["term-film"],
            _words["term-no-productions"],
            [
                new(_words["term-production"]),
                new(_words["rolls"], true),
                new(_words["takes"], true),
                new(_words["term-exposed"], true),
                new(_words["mark-good"], true),
                new(_words["term-ratio"], true),
                new(_words["waste-rate"], true),
            ],
            [
                .. _book.Shares.Select(s => FilmRow(Production(s), s.Gauge, s.Rolls, s.Use.Takes, s.Use.Tally, s.Metric, isTotal: false)),
                .. _book.Gauges.Select(g =>
                    FilmRow(
                        new(_words.Fill("term-total", ("gauge", g.Name))),
                        g,
                        _book.Of(g).Sum(s => s.Rolls),
                        _book.Of(g).Sum(s => s.Use.Takes),
                        _book.TotalOf(g),
                        _book.MetricOf(g),
                        isTotal: true
                    )
                ),
            ]
        );

    TermRow FilmRow(TermCell name, Gauge gauge, int rolls, int takes, Tally tally, MetricTally metric, bool isTotal)
    {
        Ratio? ratio = tally.Good.Frames > 0 ? new Ratio(tally.Exposed.Frames, tally.Good.Frames) : null;
        Ratio? waste = tally.Exposed.Frames > 0 ? new Ratio(tally.Waste.Frames, tally.Exposed.Frames) : null;
        return new TermRow(
            [
                name,
                Number(rolls),
                Number(takes),
                Account(gauge, tally.Exposed, metric.Exposed),
                Account(gauge, tally.Good, metric.Good),
                new(_format.ToOne(ratio), Exact(ratio)),
                new(waste is { } part ? _format.Percent(part) : PaperFormat.Dash, Exact(waste)),
            ],
            IsTotal: isTotal
        );
    }

    TermTable Waste()
    {
        var causes = Enum.GetValues<WasteCause>().Where(c => _book.Shares.Any(s => s.Use.Tally.WastedBy(c) > Footage.Zero)).ToArray();
        return new(
            "waste",
            _words["term-waste"],
            _words["term-no-productions"],
            [
                new(_words["term-production"]),
                .. causes.Select(c => new TermColumn(_words["waste-" + c.ToString().ToLowerInvariant()], true)),
                new(_words["total"], true),
            ],
            [
                .. _book.Shares.Select(s => Row(Production(s), s.Gauge, s.Use.Tally, s.Metric, false)),
                .. _book.Gauges.Select(g =>
                    Row(new(_words.Fill("term-total", ("gauge", g.Name))), g, _book.TotalOf(g), _book.MetricOf(g), true)
                ),
            ]
        );

        TermRow Row(TermCell name, Gauge gauge, Tally tally, MetricTally metric, bool isTotal) =>
            new(
                [
                    name,
                    .. causes.Select(c => Account(gauge, tally.WastedBy(c), metric.Wasted.GetValueOrDefault(c))),
                    Account(gauge, tally.Waste, metric.Waste),
                ],
                IsTotal: isTotal
            );
    }

    TermTable Found() =>
        new(
            "findings",
            _words["term-found"],
            _words["term-nothing-found"],
            [
                new(_words["term-check"]),
                new(_words["term-times"], true),
                new(_words["term-in-how-many"], true),
                new(_words["term-most-in"]),
            ],
            [
                .. _book.Found.Select(f =>
                {
                    var with = _book
                        .Shares.Select(s => (Share: s, Count: s.Found.Where(o => o.Check == f.Check).Sum(o => o.Count)))
                        .Where(s => s.Count > 0)
                        .OrderByDescending(s => s.Count)
                        .ToList();
                    return new TermRow(
                        [new(f.Check), Number(f.Count), Number(with.Count), Production(with[0].Share)],
                        f.Level == Level.Error
                    );
                }),
            ]
        );

    TermTable AtLab() =>
        new(
            "lab",
            _words["term-at-lab"],
            _words["term-nothing-at-lab"],
            [new(_words["term-production"]), new(_words["term-sent"]), new(_words["rolls"], true), new(_words["term-which"])],
            [
                .. from share in _book.Shares
                from sent in share.AtLab.GroupBy(r => r.Sent).OrderBy(g => g.Key)
                select new TermRow([
                    Production(share),
                    new(_format.Date(sent.Key)),
                    Number(sent.Count()),
                    new(string.Join(", ", sent.Select(r => r.Roll))),
                ]),
            ]
        );

    static TermCell Production(ProductionShare share) =>
        new(share.Name) { Link = $"../{string.Join('/', share.Name.Split('/').Select(Uri.EscapeDataString))}/papers/index.html" };

    static TermCell Number(int number) => new(PaperFormat.Number(number), number);

    static decimal? Exact(Ratio? ratio) => ratio is { } known ? (decimal)Math.Round(known.ToDouble(), 4) : null;

    // In whole frames on the page, in decimal feet or metres in the workbook.
    TermCell Film(Gauge gauge, Footage film) =>
        new(
            FormatOf(gauge).LengthOrDash(film),
            (decimal)Math.Round(_format.InMetres ? film.Metres(gauge).ToDouble() : film.Feet(gauge).ToDouble(), 3)
        );

    // Metres of an account are rounded once, in the production's own book, so that rows add up to their total as printed.
    TermCell Account(Gauge gauge, Footage film, long centimetres) =>
        !_format.InMetres ? Film(gauge, film) : new(_format.MetresOrDash(centimetres), centimetres / 100m);

    TermCell Money(decimal? amount, string? currency) =>
        amount is { } known ? new($"{_format.Amount(known)} {currency}".Trim(), known) : new(PaperFormat.Dash);

    PaperFormat FormatOf(Gauge gauge) => new(_school with { Gauge = gauge }, _words);
}
