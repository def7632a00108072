using System.Diagnostics;
using System.Globalization;
using Spoolbook.Printing;

namespace Spoolbook.Schools;

/// <summary>One line on the error output that says how far a long command is, where a person looks at it.</summary>
internal sealed class ProgressLine(string doing, int all, CommandEnvironment around)
{
    static readonly TimeSpan _soon = TimeSpan.FromSeconds(1);

    readonly Stopwatch _since = Stopwatch.StartNew();
    readonly Lock _gate = new();
    int _begun;
    string _newest = "";

    /// <summary>Whether it is on the screen.</summary>
    public bool IsShown { get; private set; }

    /// <summary>Notes that one more is begun.</summary>
    public void Begun(string name)
    {
        lock (_gate)
        {
            _begun++;
            _newest = name;
        }
    }

    /// <summary>Puts it on the screen, once the command takes longer than a moment.</summary>
    public void Show(bool isStopping)
    {
        if (!around.ShowsProgress || _since.Elapsed < _soon)
        {
            return;
        }

        string line;
        lock (_gate)
        {
            var left = all - _begun;
            line = isStopping
                ? "stopping after those in work; Ctrl-C again to stop at once"
                : Fitted(Plain.Escaped(_newest), $", {left.ToString(CultureInfo.InvariantCulture)} left{Time(left)}");
        }

        around.Error.Write($"\r\u001b[K{(line.Length < around.Width ? line : line[..(around.Width - 1)])}");
        IsShown = true;
    }

    /// <summary>Takes it off the screen.</summary>
    public void Clear()
    {
        if (IsShown)
        {
            around.Error.Write("\r\u001b[K");
            IsShown = false;
        }
    }

    // On a narrow screen how much is left is worth more than the head of a long path.
    string Fitted(string name, string rest)
    {
        var room = around.Width - 1 - doing.Length - 1 - rest.Length;
        var shown =
            name.Length <= room ? name
            : room > 4 ? "…" + name[^(room - 1)..]
            : "";
        return shown.Length > 0 ? $"{doing} {shown}{rest}" : doing + rest;
    }

    string Time(int left)
    {
        if (left == 0 || _begun < 4)
        {
            return "";
        }

        var seconds = _since.Elapsed.TotalSeconds / _begun * left;
        return seconds < 90
            ? string.Create(CultureInfo.InvariantCulture, $", about {Math.Max(1, Math.Round(seconds)):0} s")
            : string.Create(CultureInfo.InvariantCulture, $", about {Math.Round(seconds / 60):0} min");
    }
}
