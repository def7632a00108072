using System.Globalization;
using System.Text;

namespace Spoolbook.Asking;

/// <summary>
/// A line while it is typed: its text, where the cursor is, and what a key does to them. The cursor goes over a letter with its
/// accents at once.
/// </summary>
/// <param name="history">The lines before it, the oldest first.</param>
/// <param name="complete">The words that a line up to the cursor can end with in place of its last one.</param>
internal sealed class EditedLine(IReadOnlyList<string> history, Func<string, IReadOnlyList<string>> complete)
{
    readonly StringBuilder _text = new();
    int _back;
    string _typed = "";
    IReadOnlyList<string> _offered = [];
    int _offer;
    int _word;

    /// <summary>The text.</summary>
    public string Text => _text.ToString();

    /// <summary>Where the cursor is.</summary>
    public int At { get; private set; }

    /// <summary>What a key does.</summary>
    public KeyResult Press(ConsoleKeyInfo key)
    {
        var control = key.Modifiers.HasFlag(ConsoleModifiers.Control);
        if (key.Key != ConsoleKey.Tab)
        {
            _offered = [];
        }

        switch (key.Key)
        {
            case ConsoleKey.Enter:
                return KeyResult.Done;
            case ConsoleKey.D when control && _text.Length == 0:
            case ConsoleKey.C when control:
                return KeyResult.End;
            case ConsoleKey.Tab:
                Complete();
                break;
            case ConsoleKey.Backspace when At > 0:
                var start = Before();
                _text.Remove(start, At - start);
                At = start;
                break;
            case ConsoleKey.Delete when At < _text.Length:
            case ConsoleKey.D when control && At < _text.Length:
                _text.Remove(At, After() - At);
                break;
            case ConsoleKey.LeftArrow:
            case ConsoleKey.B when control:
                At = Before();
                break;
            case ConsoleKey.RightArrow:
            case ConsoleKey.F when control:
                At = After();
                break;
            case ConsoleKey.Home:
            case ConsoleKey.A when control:
                At = 0;
                break;
            case ConsoleKey.End:
            case ConsoleKey.E when control:
                At = _text.Length;
                break;
            case ConsoleKey.U when control:
                _text.Remove(0, At);
                At = 0;
                break;
            case ConsoleKey.K when control:
                _text.Length = At;
                break;
            case ConsoleKey.W when control:
                var word = StartOfLastWord();
                _text.Remove(word, At - word);
                At = word;
                break;
            case ConsoleKey.UpArrow:
            case ConsoleKey.P when control:
                Remember(_back + 1);
                break;
            case ConsoleKey.DownArrow:
            case ConsoleKey.N when control:
                Remember(_back - 1);
                break;
            // A line that is pasted ends so on some terminals.
            case var _ when key.KeyChar is '\r' or '\n':
                return KeyResult.Done;
            default:
                Type(key.KeyChar);
                break;
        }

        return KeyResult.Typing;
    }

    int Before() => StringInfo.ParseCombiningCharacters(Text).LastOrDefault(start => start < At);

    int After() => At >= _text.Length ? At : At + StringInfo.GetNextTextElementLength(Text.AsSpan(At));

    void Type(char c)
    {
        if (!char.IsControl(c))
        {
            _text.Insert(At++, c);
        }
    }

    // The line that was begun comes back behind the newest.
    void Remember(int back)
    {
        if (back < 0 || back > history.Count)
        {
            return;
        }

        _typed = _back == 0 ? Text : _typed;
        _back = back;
        _text.Clear().Append(back == 0 ? _typed : history[^back]);
        At = _text.Length;
    }

    // The first time the nearest word, then the others in turn.
    void Complete()
    {
        if (_offered.Count == 0)
        {
            (_word, _offer) = (StartOfWord(At), 0);
            _offered = complete(Text[..At]);
        }
        else
        {
            _offer = (_offer + 1) % _offered.Count;
        }

        if (_offered.Count > 0)
        {
            var word = _offered[_offer] + (_offered.Count == 1 ? " " : "");
            _text.Remove(_word, At - _word).Insert(_word, word);
            At = _word + word.Length;
        }
    }

    int StartOfWord(int at)
    {
        while (at > 0 && _text[at - 1] != ' ')
        {
            at--;
        }

        return at;
    }

    // Blanks before the cursor go with the word before them.
    int StartOfLastWord()
    {
        var at = At;
        while (at > 0 && _text[at - 1] == ' ')
        {
            at--;
        }

        return StartOfWord(at);
    }
}
