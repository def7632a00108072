using System.Text;

namespace Spoolbook.Fuzz.Targets;

/// <summary>
/// Several files in one input: a line <c>%%% name</c> opens each. An input without such a line is one file without a name.
/// Bytes, not text, so that a file may be in any encoding.
/// </summary>
internal static class Bundle
{
    static readonly byte[] _mark = "%%% "u8.ToArray();

    /// <summary>The files in their order; the first has no name where the input does not open with one.</summary>
    public static List<(string Name, byte[] Bytes)> Open(byte[] input)
    {
        var files = new List<(string, byte[])>();
        var (name, from) = ("", 0);
        var at = 0;
        while (at <= input.Length)
        {
            var end = at < input.Length ? Array.IndexOf(input, (byte)'\n', at) : -1;
            end = end < 0 ? input.Length : end;
            if (at < input.Length && input.AsSpan(at, end - at).StartsWith(_mark))
            {
                Close(at);
                name = Encoding.UTF8.GetString(input, at + _mark.Length, end - at - _mark.Length).Trim('\r', ' ');
                from = Math.Min(end + 1, input.Length);
            }

            at = end + 1;
        }

        Close(input.Length);
        return files;

        void Close(int to)
        {
            if (name.Length > 0 || to > from)
            {
                files.Add((name, input[from..to]));
            }
        }
    }
}
