namespace Spoolbook.Papers.Typesetting.Setup;

public enum Paper
{
    Letter,
    A4,
    A6,
}
