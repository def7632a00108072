using Spoolbook.Reading.Keys;

namespace Spoolbook.Reading.Readers;

/// <summary>The kind of a file, by its name.</summary>
static class FileKinds
{
    public static FileKind Of(string name, bool isOneFile) =>
        name switch
        {
            _ when isOneFile => FileKind.Production,
            _ when name.StartsWith("production.", StringComparison.OrdinalIgnoreCase) => FileKind.Production,
            _ when name.StartsWith("stock.", StringComparison.OrdinalIgnoreCase) => FileKind.Stock,
            _ when name.StartsWith("kit.", StringComparison.OrdinalIgnoreCase) => FileKind.Kit,
            _ => FileKind.Roll,
        };

    public static KeyTable TableOf(FileKind kind) =>
        kind switch
        {
            FileKind.Production => FileKeys.Whole,
            FileKind.Stock => FileKeys.Stock,
            FileKind.Kit => FileKeys.Kit,
            _ => FileKeys.Roll,
        };
}
