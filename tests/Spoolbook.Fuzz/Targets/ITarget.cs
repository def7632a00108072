namespace Spoolbook.Fuzz.Targets;

/// <summary>A way into the product that takes whatever somebody hands it, and must not throw.</summary>
internal interface ITarget
{
    /// <summary>What the command line and the corpus folder call it.</summary>
    string Name { get; }

    /// <summary>The kinds of mutation that know its grammar.</summary>
    IReadOnlyList<Mutations.MutationKind> Grammar { get; }

    /// <summary>Runs one input to its end, and says what is worth reaching again: checks that spoke, stages reached.</summary>
    IEnumerable<string> Run(byte[] input);
}
