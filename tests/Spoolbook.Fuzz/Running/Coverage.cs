using System.Runtime.InteropServices;
using SharpFuzz.Common;

namespace Spoolbook.Fuzz.Running;

/// <summary>
/// Which ways the program has gone. The instrumented rooms count each step from one branch to the next in a table of 65,536
/// cells; two steps may share a cell. Where the rooms are not instrumented the table stays empty, and what an input came to guides alone.
/// </summary>
internal sealed unsafe class Coverage
{
    /// <summary>The cells that the instrumented code counts in.</summary>
    public const int Cells = 1 << 16;

    readonly byte* _trace;
    readonly bool[] _reached = new bool[Cells];
    readonly HashSet<string> _outcomes = new(StringComparer.Ordinal);

    /// <summary>Must be made before any code of the product runs.</summary>
    public Coverage()
    {
        _trace = (byte*)NativeMemory.AllocZeroed(Cells);
        Trace.SharedMem = _trace;
    }

    /// <summary>How many steps have been seen.</summary>
    public int Reached { get; private set; }

    /// <summary>How many different things inputs came to.</summary>
    public int Outcomes => _outcomes.Count;

    /// <summary>Forgets the trace of the run before.</summary>
    public void Clear()
    {
        new Span<byte>(_trace, Cells).Clear();
        Trace.PrevLocation = 0;
    }

    /// <summary>The cells of the last run that no run reached before.</summary>
    public List<int> New()
    {
        var found = new List<int>();
        for (var cell = 0; cell < Cells; cell++)
        {
            if (_trace[cell] != 0 && !_reached[cell])
            {
                found.Add(cell);
            }
        }

        return found;
    }

    /// <summary>Whether the last run reached one of these cells.</summary>
    public bool Has(List<int> cells) => cells.Exists(c => _trace[c] != 0);

    /// <summary>Notes cells as reached.</summary>
    public void Add(List<int> cells)
    {
        foreach (var cell in cells)
        {
            Reached += _reached[cell] ? 0 : 1;
            _reached[cell] = true;
        }
    }

    /// <summary>Notes what an input came to, and says whether any of it is new.</summary>
    public bool Add(IEnumerable<string> outcomes)
    {
        var before = _outcomes.Count;
        _outcomes.UnionWith(outcomes);
        return _outcomes.Count > before;
    }
}
