namespace Spoolbook.Papers.Pictures;

/// <summary>A rectangle in the units of a picture.</summary>
readonly record struct Box(double X, double Y, double Width, double Height)
{
    public double Right => X + Width;

    public double Bottom => Y + Height;
}
