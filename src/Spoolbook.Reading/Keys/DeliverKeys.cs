using Spoolbook.Film.Scans;
using Spoolbook.Reading.Forms;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Keys;

/// <summary>The keys of what the lab delivers.</summary>
static class DeliverKeys
{
    public static readonly ValueKey<Raster> Raster = new("raster", ScanForms.Raster, "The size of a scanned frame in pixels.")
    {
        Example = "2048x1536",
    };
    public static readonly ValueKey<int> Bits = new("bits", ScanForms.Bits, "Bits a colour.") { Example = "10" };
    public static readonly ValueKey<bool> Log = new(
        "log",
        WordForms.YesNo,
        "Whether the files are log, flat for the grade; no for a picture to look at."
    )
    {
        Example = "yes",
    };
    public static readonly ValueKey<Film.Speed> Rate = new("rate", FilmForms.Speed, "Frames a second that the files play at.")
    {
        Example = "24",
    };
    public static readonly ValueKey<string> Framing = new("framing", WordForms.Text, "How much of the frame is in the picture.")
    {
        Example = "whole camera frame",
    };
    public static readonly ValueKey<Film.Ratio> Overscan = new(
        "overscan",
        NumberForms.Part,
        "How far the scan goes beyond the camera's picture."
    )
    {
        Example = "5%",
    };
    public static readonly ValueKey<DeliveredTakes> Takes = new("takes", WordForms.DeliveredTakes, "What is scanned of each roll.")
    {
        Example = "whole-roll",
    };
    public static readonly ValueKey<string> Naming = new("naming", WordForms.Text, "How the files are named.")
    {
        Example = "FERRY_R01_0000001",
    };
    public static readonly ValueKey<string> FileType = new("file-type", WordForms.Text, "The type of the files.") { Example = "DPX" };
    public static readonly ValueKey<Film.Ratio> Drive = new(
        "drive",
        ScanForms.Drive,
        "The drive that goes with each consignment; none where the files come another way."
    )
    {
        Example = "500GB",
    };
    public static readonly ValueKey<Film.Ratio> FrameSize = new(
        "frame-size",
        ScanForms.FrameSize,
        "What a frame fills of the drive, where the lab compresses; computed from raster and bits unless written."
    )
    {
        Example = "4.2MB",
    };
    public static readonly ValueKey<DeliveredSound> Sound = new(
        "sound",
        WordForms.DeliveredSound,
        "Mute files, sound separate to the editor, or synced by the lab."
    )
    {
        Example = "apart",
    };
    public static readonly ValueKey<Film.Ratio> SoundRatio = new(
        "sound-ratio",
        ScanForms.SoundRatio,
        "How much faster sound is played than it was recorded: the file's speed over the camera's."
    )
    {
        Example = "25/24",
    };

    public static readonly KeyTable Table = new(
        Sentence.Of("common.owner.deliver"),
        [Raster, Bits, Log, Rate, Framing, Overscan, Takes, Naming, FileType, Drive, FrameSize, Sound, SoundRatio]
    );
}
