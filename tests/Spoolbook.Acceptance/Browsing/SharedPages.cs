namespace Spoolbook.Acceptance.Browsing;

/// <summary>What the tests of made pages share.</summary>
[CollectionDefinition(MadePages.Shared)]
public sealed class SharedPages : ICollectionFixture<MadePages>;
