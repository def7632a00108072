namespace Spoolbook.Completing;

/// <summary>An argument or option that knows the words that fit it.</summary>
internal interface IOffers
{
    /// <param name="before">The words of the command line before it, without the program's name.</param>
    /// <param name="word">What is typed of it so far.</param>
    IEnumerable<Offer> Offers(IReadOnlyList<string> before, string word);
}
