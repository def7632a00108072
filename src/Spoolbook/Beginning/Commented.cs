using System.Text;

namespace Spoolbook.Beginning;

/// <summary>Lines of YAML with a comment beside each, the comments under one another.</summary>
internal sealed class Commented
{
    const int Column = 40;

    readonly StringBuilder _text = new();

    /// <summary>A line as it is, or several.</summary>
    public Commented Line(string line = "")
    {
        _text.Append(line).Append('\n');
        return this;
    }

    /// <summary>Lines that end by themselves.</summary>
    public Commented Lines(string text)
    {
        _text.Append(text);
        return this;
    }

    /// <summary>A line of YAML and what it is for.</summary>
    public Commented Line(string yaml, string about)
    {
        _text.Append(yaml).Append(' ', Math.Max(Column - yaml.Length, 2)).Append("# ").Append(about).Append('\n');
        return this;
    }

    /// <summary>A key: its value, or a line to fill in where it has none yet.</summary>
    /// <param name="before">What is left of the key: blanks, or a dash.</param>
    public Commented Key(string before, string key, string? value, string example, string about) =>
        value is not null ? Line($"{before}{key}: {value}", about) : Line($"{before}# {key}: {example}", about);

    public override string ToString() => _text.ToString();
}
