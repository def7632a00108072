using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;

namespace Spoolbook.Papers.Wording;

/// <summary>The bridge from the film that was bought to where all of it is, in words.</summary>
internal static class BridgeWords
{
    /// <summary>The key of a place's name.</summary>
    public static string KeyOf(FilmPlace place) =>
        place switch
        {
            FilmPlace.Good => "good",
            FilmPlace.Hold => "hold",
            FilmPlace.NoGood => "no-good",
            FilmPlace.Waste => "waste",
            FilmPlace.Practice => "place-practice",
            FilmPlace.ThrownAway => "place-thrown-away",
            FilmPlace.Lost => "place-lost",
            FilmPlace.Damaged => "place-damaged",
            FilmPlace.SentAway => "place-sent-away",
            FilmPlace.Unread => "place-unread",
            FilmPlace.InCamera => "chart-in-camera",
            FilmPlace.ShortEnds => "chart-short-ends",
            FilmPlace.Unopened => "chart-sealed",
            _ => throw new ArgumentOutOfRangeException(nameof(place), place, "No word for this place."),
        };

    /// <summary>Whether a place has film, or is one that a reader looks for anyway.</summary>
    public static bool IsShown(BridgePart<FilmPlace> place) =>
        place.Film.Frames > 0
        || place.What is FilmPlace.Good or FilmPlace.NoGood or FilmPlace.Waste or FilmPlace.ShortEnds or FilmPlace.Unopened;

    /// <summary>How all the film came, and what that makes: <c>Bought 600+00 ft, + from others 200+00 ft = 800+00 ft.</c></summary>
    public static string Origins(FilmBridge bridge, PaperFormat format)
    {
        var parts = bridge
            .Origins.Where(o => o.What == FilmOrigin.Bought || o.Film != Footage.Zero || (format.InMetres && o.Centimetres != 0))
            .ToList();
        return format.Words.Fill(
            parts.Count == 1 ? "bridge-of-one" : "bridge",
            (
                "parts",
                string.Concat(
                    parts.Select(
                        (o, i) =>
                            (
                                i == 0 ? ""
                                : IsLess(o) ? " − "
                                : " + "
                            ) + Part(o, format)
                    )
                )
            ),
            ("all", format.AccountWithUnit(bridge.All, bridge.Centimetres))
        );
    }

    static string Part(BridgePart<FilmOrigin> origin, PaperFormat format)
    {
        var less = IsLess(origin);
        return format.Words.Fill(
            origin.What switch
            {
                FilmOrigin.Bought => "bridge-bought",
                FilmOrigin.BoughtForPractice => "bridge-bought-for-practice",
                FilmOrigin.Came => "bridge-came",
                FilmOrigin.FromNoCan => "bridge-from-no-can",
                _ when origin.Film == Footage.Zero => "bridge-rounded",
                _ => less ? "bridge-cans-lacked" : "bridge-cans-held-more",
            },
            (
                "film",
                format.AccountWithUnit(less ? Footage.Zero - origin.Film : origin.Film, less ? -origin.Centimetres : origin.Centimetres)
            )
        );
    }

    static bool IsLess(BridgePart<FilmOrigin> origin) =>
        origin.Film < Footage.Zero || (origin.Film == Footage.Zero && origin.Centimetres < 0);
}
