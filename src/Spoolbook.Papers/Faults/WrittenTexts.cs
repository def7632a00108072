using System.Collections;
using System.Diagnostics.CodeAnalysis;
using System.Reflection;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.Faults;

/// <summary>
/// Every written text of a production, with its place. Found by reflection over the records, so that new keys are
/// included.
/// </summary>
internal static class WrittenTexts
{
    public static IReadOnlyList<Located<string>> Of(Production production)
    {
        var texts = new Dictionary<Place, Located<string>>();
        Collect(production, texts, []);
        return [.. texts.Values];
    }

    [UnconditionalSuppressMessage("Trimming", "IL2075", Justification = "The native program keeps all of the records' room.")]
    static void Collect(object? at, Dictionary<Place, Located<string>> texts, Dictionary<Type, List<PropertyInfo>> known)
    {
        switch (at)
        {
            case null or string:
                return;
            case Located<string> text:
                texts.TryAdd(text.Place, text);
                return;
            case IEnumerable list:
                foreach (var item in list)
                {
                    Collect(item, texts, known);
                }

                return;
        }

        var type = at.GetType();
        if (!known.TryGetValue(type, out var written))
        {
            known[type] = written = IsRecord(type) ? [.. type.GetProperties().Where(IsWritten)] : [];
        }
        foreach (var property in written)
        {
            Collect(property.GetValue(at), texts, known);
        }
    }

    static bool IsRecord(Type type) => type.Assembly == typeof(Production).Assembly && !type.IsEnum;

    /// <summary>Only what the reader sets: a computed property repeats it.</summary>
    static bool IsWritten(PropertyInfo property) =>
        property is { CanRead: true, CanWrite: true } && property.GetIndexParameters().Length == 0;
}
