using System.CommandLine;

namespace Spoolbook.Completing;

/// <summary>An argument that knows the words that fit it.</summary>
internal sealed class OfferingArgument<T>(string name, Func<IReadOnlyList<string>, string, IEnumerable<Offer>> offers)
    : Argument<T>(name),
        IOffers
{
    public IEnumerable<Offer> Offers(IReadOnlyList<string> before, string word) => offers(before, word);
}
