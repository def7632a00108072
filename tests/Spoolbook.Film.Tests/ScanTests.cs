using Spoolbook.Film.Scans;

namespace Spoolbook.Film.Tests;

public class ScanTests
{
    // Digital Fact Book: 2048 × 1536 at 10 bit 4:4:4 is 12 MB a frame (its MB has 1024 × 1024 bytes), 100 ft of 16 mm 50 GB.
    [Fact]
    public void A_hundred_feet_of_16_mm_scanned_2048_by_1536_in_10_bit_fill_50_gigabytes()
    {
        var frame = ScannedFrame.Bytes(new Raster(2048, 1536), 10);
        var roll = frame * (Gauge.Film16.FramesPerFoot * 100);

        Assert.Equal(12, (double)frame / (1024 * 1024));
        Assert.Equal(50, (double)(roll / ScannedFrame.Gigabyte).Round());
    }

    [Theory]
    [InlineData(8, 3)] // computed: a byte a colour
    [InlineData(10, 4)] // three of 10 bits in 32, from memory
    [InlineData(12, 6)] // each in 16 bits, from memory
    [InlineData(16, 6)] // computed
    public void A_pixel_fills_so_many_bytes(int bits, int bytes) => Assert.Equal(bytes, ScannedFrame.Bytes(new Raster(1, 1), bits));

    [Fact]
    public void No_scan_has_9_bits() => Assert.Throws<ArgumentOutOfRangeException>(() => ScannedFrame.Bytes(new Raster(1, 1), 9));

    [Theory]
    [InlineData("24", "25", "4.16667")] // Digital Fact Book
    [InlineData("24", "23.976", "-0.09990")] // Digital Fact Book: 0.1 %
    [InlineData("25", "25", "0.00000")]
    public void Sound_is_played_faster_by_so_many_per_cent(string camera, string file, string percent) =>
        Assert.Equal(percent, Change(camera, file).Percent.ToText(5));

    [Theory]
    [InlineData("24", "25", "25/24")]
    [InlineData("24", "23.976", "1000/1001")]
    public void The_ratio_of_sound_is_that_of_the_speeds(string camera, string file, string ratio) =>
        Assert.Equal(ratio, Change(camera, file).Ratio.ToString());

    // Digital Fact Book: 4 frames in 100 ft.
    [Fact]
    public void Sound_at_24_is_4_frames_off_after_100_feet_of_picture_at_23_976() =>
        Assert.Equal(4, (int)Change("24", "23.976").Drift(new Footage(4000)).Round());

    static RateChange Change(string camera, string file) => new(Speed.Parse(camera).Value, Speed.Parse(file).Value);
}
