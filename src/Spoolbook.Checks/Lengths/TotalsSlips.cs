using System.Collections.Immutable;
using System.Globalization;
using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Checks.Lengths;

/// <summary>Slips of the pen in the boxes of a sheet, where the log is right: without the slip no box differs.</summary>
sealed class TotalsSlips(Context context, ImmutableArray<TotalsBox> boxes)
{
    public IEnumerable<Related> Find() =>
        boxes.Where(b => b.Differs).ToArray() switch
        {
            [var one] => OfOne(one),
            [{ Account: not null } one, { Account: not null } other] => Swapped(one, other),
            _ => [],
        };

    IEnumerable<Related> OfOne(TotalsBox box)
    {
        var length = box.Sheet.Value.In(context.Production);
        if (length is { Unit: not FilmLengthUnit.Frames, Quantity.IsWhole: true } && length.Quantity == box.Logged.Frames)
        {
            yield return Written(box, "length/totals-differ.other.frames", Number(box.Logged.Frames) + "fr");
        }

        foreach (var (other, written) in DigitsSwapped(length))
        {
            if (box.WouldBeRightAs(other, context))
            {
                yield return Written(box, "length/totals-differ.other.digits", written);
            }
        }
    }

    static Related Written(TotalsBox box, string sentence, string written) =>
        new(box.Sheet.Place, Sentence.Of(sentence, ("box", box.Said), ("written", written)));

    IEnumerable<Related> Swapped(TotalsBox one, TotalsBox other)
    {
        if (
            one.WouldBeRightAs(other.Sheet.Value.In(context.Production), context)
            && other.WouldBeRightAs(one.Sheet.Value.In(context.Production), context)
        )
        {
            yield return new Related(
                one.Sheet.Place,
                Sentence.Of("length/totals-differ.other.swapped", ("box", one.Said), ("other", other.Said))
            );
        }
    }

    IEnumerable<(FilmLength Length, string Written)> DigitsSwapped(FilmLength length)
    {
        if (!length.Quantity.IsWhole)
        {
            yield break;
        }

        foreach (var number in Swaps((long)length.Quantity.Round(), 1))
        {
            yield return length.Unit switch
            {
                FilmLengthUnit.FeetAndFrames => (FilmLength.OfFeetAndFrames(number, length.Over), FeetAndFrames(number, length.Over)),
                FilmLengthUnit.Frames => (FilmLength.OfFrames(number), Number(number) + "fr"),
                FilmLengthUnit.Metres => (FilmLength.OfMetres(number), Number(number)),
                FilmLengthUnit.Seconds => (FilmLength.OfSeconds(number), Number(number) + "s"),
                _ => (FilmLength.OfFeet(number), Number(number)),
            };
        }

        foreach (var over in length.Unit == FilmLengthUnit.FeetAndFrames ? Swaps(length.Over, 2) : [])
        {
            if (over < context.Production.Gauge.FramesPerFoot)
            {
                var feet = (long)length.Quantity.Round();
                yield return (FilmLength.OfFeetAndFrames(feet, over), FeetAndFrames(feet, over));
            }
        }
    }

    // Two neighbouring digits in each other's place: 45 is 54.
    static IEnumerable<long> Swaps(long number, int fewestDigits)
    {
        var digits = number.ToString(CultureInfo.InvariantCulture).PadLeft(fewestDigits, '0');
        for (var i = 0; i + 1 < digits.Length; i++)
        {
            if (digits[i] != digits[i + 1])
            {
                yield return long.Parse($"{digits[..i]}{digits[i + 1]}{digits[i]}{digits[(i + 2)..]}", CultureInfo.InvariantCulture);
            }
        }
    }

    static string FeetAndFrames(long feet, long over) => string.Create(CultureInfo.InvariantCulture, $"{feet}+{over:00}");

    static string Number(long number) => number.ToString(CultureInfo.InvariantCulture);
}
