using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Forecasts;

namespace Spoolbook.Shoot.Tests.Forecasts;

/// <summary>How the film of shots behaves in a simulated shoot: film of the i-th of so many shots, in average ones.</summary>
/// <param name="Name">Its name in the table.</param>
/// <param name="Foreseen">Whether the forecast claims to hold for it: nobody foresees that shots will change.</param>
/// <param name="Film">Draws one shot; the shoot's own number, 0 to 1, is the same for all its shots.</param>
sealed record Behaviour(string Name, bool Foreseen, Func<DrawnNumbers, double, int, int, double> Film)
{
    public static ImmutableArray<Behaviour> All { get; } =
    [
        new("alike: a third more or less", true, (by, _, _, _) => Math.Max(0.1, 1 + (0.33 * by.Normal()))),
        new("lognormal, σ 0.5", true, (by, _, _, _) => Math.Exp(0.5 * by.Normal())),
        new("lognormal, σ 0.8", true, (by, _, _, _) => Math.Exp(0.8 * by.Normal())),
        new("as many takes as it needs: each is good with chance 0.4", true, (by, _, _, _) => TakesUntilGood(by)),
        new("two kinds: 70 % inserts, 30 % six times as long", true, (by, _, _, _) =>
            (by.Part() < 0.3 ? 2.4 : 0.4) * Math.Exp(0.4 * by.Normal())
        ),
        new("one in ten shot on another's film", true, (by, _, _, _) => by.Part() < 0.1 ? 0 : Math.Exp(0.6 * by.Normal())),
        new("a trend of 20 % over the shoot, up or down", true, (by, own, i, of) =>
            Math.Exp(0.6 * by.Normal()) * Trend(own < 0.5 ? 0.2 : -0.2, i, of)
        ),
        new("a trend of 20 %, up", false, (by, _, i, of) => Math.Exp(0.6 * by.Normal()) * Trend(0.2, i, of)),
        new("a trend of 20 %, down", false, (by, _, i, of) => Math.Exp(0.6 * by.Normal()) * Trend(-0.2, i, of)),
        new("all inserts first, then the long shots", false, (by, _, i, of) => (i < of / 2 ? 0.6 : 1.4) * Math.Exp(0.4 * by.Normal())),
    ];

    static double Trend(double over, int shot, int of) => 1 + (over * shot / of);

    static double TakesUntilGood(DrawnNumbers by)
    {
        var length = 0.4 * Math.Exp(0.5 * by.Normal());
        var film = 0.0;
        do
        {
            film += length * (0.7 + (0.6 * by.Part()));
        } while (by.Part() > 0.4);

        return film;
    }
}

/// <summary>
/// A random shoot on 100 ft rolls of 16 mm: heads and tails, a gap after some takes, and the end of a roll thrown away
/// when the next take does not fit. The forecast is made in the middle; the rest shows whether it held.
/// </summary>
static class SimulatedShoot
{
    const int RollLength = 4000;
    const double AverageShot = 1000;

    /// <summary>What is known after the finished shots, and the film of stock that the shots left then took.</summary>
    public static (ForecastInput Ground, Footage Used) Play(Behaviour behaviour, int finished, int left, ulong seed)
    {
        var by = new DrawnNumbers(seed, 1);
        var own = by.Part();
        var camera = new Camera(by);
        var shots = ImmutableArray.CreateBuilder<FinishedShot>();
        ForecastInput? ground = null;
        var used = 0L;
        for (var i = 0; i < finished + left; i++)
        {
            if (i == finished)
            {
                used = camera.Used;
                ground = new ForecastInput
                {
                    Finished = shots.ToImmutable(),
                    Lost = camera.LostOnRolls,
                    FilmOfShots = new Footage(camera.FilmOnRolls),
                    ShotsLeft = left,
                    Stock = Footage.Zero,
                };
            }

            var film = (long)Math.Min(AverageShot * behaviour.Film(by, own, i, finished + left), 60 * RollLength);
            camera.Shoot(film);
            shots.Add(new FinishedShot($"{i + 1}", new Footage(film)));
        }

        return (ground!, new Footage(camera.Used - used));
    }

    sealed class Camera(DrawnNumbers by)
    {
        readonly List<(long Lost, long Film)> _takenOut = [];
        long _at = RollLength;
        long _lost;
        long _film;

        /// <summary>Film exposed or lost so far.</summary>
        public long Used { get; private set; }

        public ImmutableArray<Footage> LostOnRolls => [.. Counted.Select(r => new Footage(r.Lost))];

        public long FilmOnRolls => Counted.Sum(r => r.Film);

        // As for a real shoot, the roll in the camera counts only while there is no other.
        IEnumerable<(long Lost, long Film)> Counted => _takenOut.Count > 0 ? _takenOut : [(_lost, _film)];

        public void Shoot(long film)
        {
            var takes = 1 + by.Below(4);
            for (var take = takes; take >= 1; take--)
            {
                var length = film / take;
                film -= length;
                for (; length > RollLength / 2; length -= RollLength / 2)
                {
                    Take(RollLength / 2);
                }

                Take(length);
            }
        }

        void Take(long length)
        {
            if (length == 0)
            {
                return;
            }

            if (_at + length > RollLength - 80)
            {
                Change();
            }

            _at += length;
            _film += length;
            Used += length;
            if (by.Part() < 0.3)
            {
                Lose(Math.Min(by.Below(40), RollLength - _at));
            }
        }

        void Change()
        {
            if (_at < RollLength || _film > 0)
            {
                Lose(RollLength - _at);
                _takenOut.Add((_lost, _film));
            }

            (_at, _lost, _film) = (0, 0, 0);
            Lose(120 + by.Below(80));
        }

        void Lose(long film)
        {
            _at += film;
            _lost += film;
            Used += film;
        }
    }
}
