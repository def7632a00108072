using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Trees;

/// <summary>A repetition, <c>*name</c>, of what is written elsewhere.</summary>
sealed class AliasNode(Place place, int start, int end, Node meant) : Node(place, start, end)
{
    public override Node Meant => meant;

    public override long Weight => meant.Weight;

    public override int Height => meant.Height;

    public override Sentence What => meant.What;
}
