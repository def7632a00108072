using System.Collections.Immutable;

namespace Spoolbook.Shoot.Records;

/// <summary>
/// Finds things of a list by name without going through the list each time. It is made at the first question; of two things of
/// one name it finds the first. It says nothing that the list does not, so any two are equal.
/// </summary>
sealed class NameIndex<T>(Func<T, string> name) : IEquatable<NameIndex<T>>
    where T : class
{
    // Kept with the list that it was made of: a record that was copied has another list and this same index.
    volatile Made? _made;

    /// <summary>The first of that name, or null.</summary>
    public T? Find(ImmutableArray<T> list, string? wanted)
    {
        if (wanted is null)
        {
            return null;
        }

        var made = _made;
        if (made is null || made.List != list)
        {
            _made = made = new Made(list, name);
        }

        return made.ByName.GetValueOrDefault(wanted);
    }

    public bool Equals(NameIndex<T>? other) => other is not null;

    public override bool Equals(object? obj) => Equals(obj as NameIndex<T>);

    public override int GetHashCode() => 0;

    sealed class Made
    {
        public Made(ImmutableArray<T> list, Func<T, string> name)
        {
            List = list;
            ByName = new Dictionary<string, T>(list.Length, StringComparer.Ordinal);
            foreach (var item in list)
            {
                ByName.TryAdd(name(item), item);
            }
        }

        public ImmutableArray<T> List { get; }

        public Dictionary<string, T> ByName { get; }
    }
}
