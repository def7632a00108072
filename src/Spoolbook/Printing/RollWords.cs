using System.Globalization;
using Spoolbook.Checks.Running;
using Spoolbook.Entry.Logging;
using Spoolbook.Film;
using Spoolbook.Logging;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Printing;

/// <summary>How far a roll is, in the words of an answer.</summary>
internal static class RollWords
{
    // From here on minutes are easier to picture.
    const int MostSeconds = 100;

    /// <summary>The answer to a line, in parts.</summary>
    public static IEnumerable<string> Of(LineAnswer answer)
    {
        var (change, said) = (answer.Change!, answer.Said!);
        if (change.Deed == LineDeed.Dated)
        {
            return [$"The lines that follow are of {Context.Day(said.Day!.Value)}"];
        }

        var what = change.Entry ?? (said.Number is { } number ? "#" + number : "");
        IEnumerable<string> first = change.Deed switch
        {
            LineDeed.Amended => [$"{what} amended"],
            LineDeed.Struck => [$"{what} struck out"],
            LineDeed.Nothing => [$"{what}: nothing to do"],
            _ => [],
        };
        return
        [
            .. first,
            .. change.Remark is { } remark ? Of(remark) : [],
            .. answer is { Roll: { } roll, Production: { } production } ? Of(roll, production) : [],
            .. change.Dated is { } day ? (string[])[$"on {Context.Day(day)}"] : [],
        ];
    }

    // A remark that is gone must be seen to go.
    static IEnumerable<string> Of(ChangedRemark remark)
    {
        if (remark.Was is { } was)
        {
            yield return $"note was \"{Plain.Escaped(was)}\"";
        }

        yield return remark.Now is { } now ? $"note is now \"{Plain.Escaped(now)}\"" : "no note now";
    }

    static IEnumerable<string> Of(RollInCamera roll, Production production)
    {
        var context = new Context(production);
        var name = Plain.Escaped(roll.Book.Roll.Name.Value);
        if (roll.Book.Roll.Unload is { } unload)
        {
            yield return $"{name} is out: {context.Write(roll.Book.Tally.Exposed)} of {context.Write(roll.Book.Strip.Loaded)} exposed";
            if (roll.Left.Frames > 0)
            {
                var fate = unload.ShortEnd?.Value == Remainder.Thrown ? "thrown away" : "short end";
                yield return $"{context.Write(roll.Left)} {fate}";
            }

            yield break;
        }

        yield return roll.At is { } at ? $"{name} at {context.Write(at)}" : $"{name}: nobody can say how far";
        if (roll.ExposedTo is { } exposed)
        {
            yield return $"pass {Context.Number(roll.Pass)}, exposed to {context.Write(exposed)}";
        }

        if (roll.Left.Frames == 0)
        {
            yield return "no fresh film left";
            yield break;
        }

        yield return $"{context.Write(roll.Left)} left, {Time(roll.Seconds)} at {roll.Speed.FramesPerSecond.ToShortText(3)} fps";
        if (roll.SpringLeft is { } spring)
        {
            yield return spring.Frames > 0 ? $"spring {context.Write(spring)}" : "spring run down: wind it";
        }
    }

    // Rounded down: film that is counted on must be there.
    static string Time(Ratio seconds)
    {
        var whole = (long)seconds.Floor();
        return whole < MostSeconds
            ? string.Create(CultureInfo.InvariantCulture, $"{whole} s")
            : RunningTime.Text(new Ratio(whole, 1), 0) + " min";
    }
}
