namespace Spoolbook.Papers.Typesetting.Setting;

enum Alignment
{
    Left,
    Right,
    Center,
}
