using System.Text;

namespace Spoolbook.Acceptance.Papers;

/// <summary>The tree of a document's structure as poppler prints it, with repeated items printed once with their count.</summary>
internal static class StructureDump
{
    public static string InShort(string dump)
    {
        var root = new Node("");
        var path = new Stack<(int Depth, Node Node)>([(-1, root)]);
        foreach (var line in dump.Split('\n').Where(line => line.Trim().Length > 0))
        {
            var depth = line.Length - line.TrimStart().Length;
            var node = new Node(Name(line.Trim()));
            while (path.Peek().Depth >= depth)
            {
                path.Pop();
            }

            path.Peek().Node.Inner.Add(node);
            path.Push((depth, node));
        }

        var text = new StringBuilder();
        Print(root.Inner, 0);
        return text.ToString();

        void Print(IEnumerable<Node> nodes, int depth)
        {
            string? before = null;
            var count = 0;
            Node? waiting = null;
            foreach (var node in nodes)
            {
                var all = node.All();
                if (all != before)
                {
                    Flush();
                }

                (before, waiting, count) = (all, node, count + 1);
            }

            Flush();

            void Flush()
            {
                if (waiting is null)
                {
                    return;
                }

                text.Append(' ', depth * 2).Append(waiting.Name).Append(count > 1 ? $" × {count}" : "").Append('\n');
                Print(waiting.Inner, depth + 1);
                (waiting, count) = (null, 0);
            }
        }
    }

    // The structure needs a picture to have a place; which place is up to the page.
    static string Name(string line) =>
        line.StartsWith("/BBox", StringComparison.Ordinal) ? "/BBox" : line.TrimEnd(':').Replace(" (block)", "", StringComparison.Ordinal);

    sealed class Node(string name)
    {
        public string Name => name;

        public List<Node> Inner { get; } = [];

        public string All() => $"{name}({string.Concat(Inner.Select(node => node.All()))})";
    }
}
