using System.Globalization;

namespace Spoolbook.Film.Exposures;

/// <summary>Everything that changes an exposure, added up.</summary>
public static class Exposure
{
    /// <summary>
    /// The terms that apply, each in stops and with its working: time (speed, shutter and its mark, or a timed exposure),
    /// finder, densities, filters, factors, extension, subject, reciprocity failure, push or pull, rating. Factors multiply,
    /// so stops add, in any order (Eastman Kodak E-142, p. 3).
    /// </summary>
    public static ExposureBalance Combine(ExposureConditions conditions)
    {
        var terms = TimeTerms(conditions).Concat(GlassTerms(conditions)).Concat(SubjectTerms(conditions)).Concat(FilmTerms(conditions));
        return new ExposureBalance([.. terms]);
    }

    /// <summary>How long a frame sees light: as timed, else by shutter, speed and mark; null where the mark is black.</summary>
    public static ExposureTime? TimeOf(ExposureConditions conditions)
    {
        if (conditions.Timed is { } timed)
        {
            return timed;
        }

        var whole = ExposureTime.Of(conditions.Shutter ?? conditions.ReferenceShutter, conditions.Speed ?? conditions.ReferenceSpeed);
        return conditions.Opening is { } opening ? whole.At(opening) : whole;
    }

    static IEnumerable<ExposureTerm> TimeTerms(ExposureConditions conditions)
    {
        if (conditions.Timed is { } timed)
        {
            var reference = ExposureTime.Of(conditions.ReferenceShutter, conditions.ReferenceSpeed);
            yield return new("timed exposure", timed.StopsOver(reference), $"log2 ({timed} / {reference})");
            yield break;
        }

        if (conditions.Speed is { } speed)
        {
            var share = conditions.ReferenceSpeed.FramesPerSecond / speed.FramesPerSecond;
            yield return new(
                "speed",
                Stops.FromFraction(share.ToDouble()),
                $"log2 ({conditions.ReferenceSpeed} / {speed} frames a second)"
            );
        }

        if (conditions.Shutter is { } shutter)
        {
            yield return new(
                "shutter",
                shutter.StopsOver(conditions.ReferenceShutter),
                $"log2 ({shutter} / {conditions.ReferenceShutter})"
            );
        }

        if (conditions.Opening is { } opening)
        {
            yield return new("variable shutter", opening.Stops, $"{opening.Name}, as counted");
        }
    }

    static IEnumerable<ExposureTerm> GlassTerms(ExposureConditions conditions)
    {
        if (conditions.FinderLoss is { } loss)
        {
            var passed = 1 - loss;
            yield return new(
                "finder",
                Stops.FromFraction(passed.ToDouble()),
                $"log2 {passed.ToShortText(4)}, the part that reaches the film"
            );
        }

        foreach (var density in conditions.Densities)
        {
            yield return new($"ND {Number(density)}", Stops.FromDensity(density), $"-{Number(density)} / log10 2");
        }

        foreach (var filter in conditions.Filters)
        {
            yield return new($"filter {filter.Name}", filter.Stops, "as tabled");
        }

        foreach (var factor in conditions.FilterFactors)
        {
            yield return new($"filter factor {Number(factor)}", Stops.FromFactor(factor), $"-log2 {Number(factor)}");
        }

        if (conditions.Extension is { } extension)
        {
            var sum = $"(({Number(extension.Focal)} + {Number(extension.Beyond)}) / {Number(extension.Focal)})²";
            yield return new("extension", Stops.FromFactor(extension.Factor), $"-log2 {sum}");
        }
    }

    static IEnumerable<ExposureTerm> SubjectTerms(ExposureConditions conditions)
    {
        if (conditions.Subject != SubjectTone.Average)
        {
            yield return new(
                "subject",
                SubjectTones.Stops(conditions.Subject),
                conditions.Subject == SubjectTone.Dark ? "dark colours" : "pastels, or more"
            );
        }
    }

    static IEnumerable<ExposureTerm> FilmTerms(ExposureConditions conditions)
    {
        if (conditions.Reciprocity is { } law && TimeOf(conditions) is { } time)
        {
            var seconds = time.Seconds.ToDouble();
            if (law.CorrectionAt(seconds) is { } correction)
            {
                yield return new("reciprocity failure", -correction, $"{law.Name} at {time}");
            }
            else if (law is ReciprocityTable table && table.EndsBefore(seconds))
            {
                yield return new(
                    "reciprocity failure",
                    -table.LeastAt(seconds),
                    $"at least: the table ends at {ExposureTime.Write(table.Points[^1].Seconds)}"
                );
            }
        }

        if (conditions.Push != 0)
        {
            yield return new(conditions.Push > 0 ? "push" : "pull", conditions.Push, $"developed for index × 2^{Number(conditions.Push)}");
        }

        if (conditions.Rating is { } rating)
        {
            yield return new("rating", -rating.StopsOver, $"log2 ({Number(rating.Rated)} / {Number(rating.Can)})");
        }
    }

    static string Number(double value) => value.ToString("0.####", CultureInfo.InvariantCulture);
}
