using System.CommandLine;

namespace Spoolbook.Completing;

/// <summary>An option that knows the words that fit it.</summary>
internal sealed class OfferingOption<T>(string name, Func<IReadOnlyList<string>, string, IEnumerable<Offer>> offers)
    : Option<T>(name),
        IOffers
{
    public IEnumerable<Offer> Offers(IReadOnlyList<string> before, string word) => offers(before, word);
}
