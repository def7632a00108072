using Spoolbook.Reading.Forms;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Reading.Keys;

/// <summary>A key with a map from names to values. Other rooms know the names.</summary>
/// <param name="Names">What the names are: <c>checks or groups</c>.</param>
sealed record NamesKey<T>(string Name, Sentence Names, Form<T> Form, string Description) : Key(Name, Description), INamesKey
{
    Form INamesKey.Form => Form;
}
