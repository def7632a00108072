namespace Spoolbook.Beginning;

/// <summary>What came of an answer: what it says, or what is wrong with it.</summary>
internal readonly record struct Answered<T>(T? Value, string Objection)
    where T : class
{
    public static Answered<T> As(T value) => new(value, "");

    public static Answered<T> Not(string objection) => new(null, objection);
}
