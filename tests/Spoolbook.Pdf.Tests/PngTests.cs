using System.Buffers.Binary;
using System.IO.Compression;
using Spoolbook.Pdf.Documents;
using Spoolbook.Pdf.Drawing;
using Spoolbook.Pdf.Images;

namespace Spoolbook.Pdf.Tests;

/// <summary>Logos in pixels of every kind are read as their writer made them.</summary>
public sealed class PngTests : IDisposable
{
    const int Grey = 0,
        Colour = 2,
        Palette = 3,
        GreyAlpha = 4,
        ColourAlpha = 6;

    readonly string _folder = Directory.CreateTempSubdirectory("spoolbook").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    /// <summary>Poppler writes a page as PNG, with filters of its own choice, and as bare pixels: both must be one picture.</summary>
    [ToolFact("pdftoppm")]
    public void What_another_program_writes_is_read_to_the_pixel()
    {
        var paper = Path.Combine(_folder, "paper.pdf");
        File.WriteAllBytes(paper, Shapes());
        string[] how = ["-r", "60", "-singlefile", paper, Path.Combine(_folder, "a")];
        Tools.Run("pdftoppm", ["-png", .. how]);
        Tools.Run("pdftoppm", how);
        byte[] bare = File.ReadAllBytes(Path.Combine(_folder, "a.ppm")),
            pixels = PngPicture.Read(File.ReadAllBytes(Path.Combine(_folder, "a.png")), 2000).Pixels;
        Assert.Contains(pixels, p => p is > 0 and < 255);
        Assert.Equal(bare[^pixels.Length..], pixels);
    }

    [Fact]
    public void Every_kind_of_pixel_is_read()
    {
        Assert.Equal(
            [0, 255, 255, 0],
            Read(
                2,
                2,
                Grey,
                1,
                [
                    [0b0100_0000],
                    [0b1000_0000],
                ]
            ).Pixels
        );
        Assert.Equal(
            [0, 85, 170, 255],
            Read(
                4,
                1,
                Grey,
                2,
                [
                    [0b0001_1011],
                ]
            ).Pixels
        );
        Assert.Equal(
            [0, 17, 255],
            Read(
                3,
                1,
                Grey,
                4,
                [
                    [0x01, 0xF0],
                ]
            ).Pixels
        );
        Assert.Equal(
            [18, 255],
            Read(
                2,
                1,
                Grey,
                16,
                [
                    [0x12, 0x34, 0xFF, 0xFF],
                ]
            ).Pixels
        );
        Assert.Equal(
            [1, 2, 3, 4, 5, 6],
            Read(
                2,
                1,
                Colour,
                8,
                [
                    [1, 2, 3, 4, 5, 6],
                ]
            ).Pixels
        );
        Assert.Equal(
            [7, 8, 9, 1, 2, 3],
            Read(
                2,
                1,
                Palette,
                4,
                [
                    [0x10],
                ],
                ("PLTE", [1, 2, 3, 7, 8, 9])
            ).Pixels
        );
    }

    [Fact]
    public void What_shines_through_is_laid_on_white()
    {
        Assert.Equal(
            [255, 128, 0],
            Read(
                3,
                1,
                GreyAlpha,
                8,
                [
                    [0, 0, 1, 127, 0, 255],
                ]
            )
                .Pixels.Select(p => p == 129 ? (byte)128 : p)
        );
        Assert.Equal(
            [255, 255, 255, 10, 20, 30],
            Read(
                2,
                1,
                ColourAlpha,
                8,
                [
                    [10, 20, 30, 0, 10, 20, 30, 255],
                ]
            ).Pixels
        );
        Assert.Equal(
            [255, 255, 255, 4, 5, 6],
            Read(
                2,
                1,
                Palette,
                8,
                [
                    [0, 1],
                ],
                ("PLTE", [1, 2, 3, 4, 5, 6]),
                ("tRNS", [0])
            ).Pixels
        );
        Assert.Equal(
            [255, 9],
            Read(
                2,
                1,
                Grey,
                8,
                [
                    [7, 9],
                ],
                ("tRNS", [0, 7])
            ).Pixels
        );
    }

    [Fact]
    public void The_passes_of_an_interlaced_picture_make_the_same_picture()
    {
        var rows = Enumerable.Range(0, 9).Select(y => Enumerable.Range(0, 11).Select(x => (byte)(y * 11 + x)).ToArray()).ToArray();
        (int X, int Y, int StepX, int StepY)[] passes =
        [
            (0, 0, 8, 8),
            (4, 0, 8, 8),
            (0, 4, 4, 8),
            (2, 0, 4, 4),
            (0, 2, 2, 4),
            (1, 0, 2, 2),
            (0, 1, 1, 2),
        ];
        var passed = passes
            .SelectMany(p =>
                rows.Where((_, y) => y >= p.Y && (y - p.Y) % p.StepY == 0)
                    .Select(row => row.Where((_, x) => x >= p.X && (x - p.X) % p.StepX == 0).ToArray())
            )
            .Where(row => row.Length > 0)
            .ToArray();

        var picture = PngPicture.Read(Written(11, 9, Grey, 8, passed, interlaced: true), 2000);

        Assert.Equal(rows.SelectMany(r => r), picture.Pixels);
    }

    [Theory]
    [InlineData("no PNG", 0, 0)]
    [InlineData("cut off", 40, -1)]
    [InlineData("check sum", 18, 9)]
    [InlineData("at most 1 a side", -1, 0)]
    public void A_damaged_or_too_large_picture_says_what_it_is(string reason, int at, int value)
    {
        var file = Written(
            2,
            1,
            Grey,
            8,
            [
                [1, 2],
            ]
        );
        if (value == -1)
        {
            file = file[..at];
        }
        else if (at >= 0)
        {
            file[at] = (byte)value;
        }

        Assert.Contains(
            reason,
            Assert.Throws<FormatException>(() => PngPicture.Read(file, at < 0 ? 1 : 2000)).Message,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_small_file_that_unpacks_to_a_large_one_is_read_only_up_to_its_stated_size()
    {
        var file = Written(
            2,
            1,
            Grey,
            8,
            [
                [1, 2],
                .. Enumerable.Repeat(new byte[1000], 1000),
            ]
        );
        Assert.Equal([1, 2], PngPicture.Read(file, 2000).Pixels);
    }

    [Fact]
    public void A_picture_of_more_pixels_than_a_page_can_use_is_refused_before_any_is_unpacked()
    {
        // Its pixels are not even there, and nobody has looked for them.
        var file = Written(
            2000,
            1001,
            Grey,
            8,
            [
                [],
            ]
        );

        Assert.Equal(
            "it is 2000 × 1001 pixels large, and at most 2 million in all are read",
            Assert.Throws<FormatException>(() => PngPicture.Read(file, 2000)).Message
        );
    }

    // Edges that are not straight across the pixels come out grey.
    static byte[] Shapes()
    {
        var document = new PdfDocument(
            new DocumentIdentity(
                "Shapes",
                "Second assistant",
                "en",
                new DateTimeOffset(2026, 10, 4, 17, 30, 0, TimeSpan.Zero),
                "tests",
                Accessible: false
            )
        );
        var page = document.AddPage(298, 420);
        page.BeginFurniture();
        page.Rectangle(20.3, 30.7, 120, 50, new Paint(0x000000, null));
        page.Path([PathStep.Move(50, 200), PathStep.Curve(90, 120, 180, 120, 240, 310), PathStep.Close], new Paint(0xD0D0D0, 0x303030, 3));
        page.End();
        return document.Save();
    }

    static PngPicture Read(int width, int height, byte kind, byte depth, byte[][] rows, params (string, byte[])[] chunks) =>
        PngPicture.Read(Written(width, height, kind, depth, rows, false, chunks), 2000);

    static byte[] Written(
        int width,
        int height,
        byte kind,
        byte depth,
        byte[][] rows,
        bool interlaced = false,
        params (string Name, byte[] Data)[] chunks
    )
    {
        var header = new byte[13];
        BinaryPrimitives.WriteInt32BigEndian(header, width);
        BinaryPrimitives.WriteInt32BigEndian(header.AsSpan(4), height);
        (header[8], header[9], header[12]) = (depth, kind, (byte)(interlaced ? 1 : 0));
        using var packed = new MemoryStream();
        using (var zlib = new ZLibStream(packed, CompressionLevel.Fastest, leaveOpen: true))
        {
            zlib.Write([.. rows.SelectMany(row => (byte[])[0, .. row])]);
        }

        return
        [
            0x89,
            .. "PNG\r\n\x1a\n"u8,
            .. Chunk("IHDR", header),
            .. chunks.SelectMany(c => Chunk(c.Name, c.Data)),
            .. Chunk("IDAT", packed.ToArray()),
            .. Chunk("IEND", []),
        ];
    }

    static byte[] Chunk(string name, byte[] data)
    {
        byte[] named = [.. System.Text.Encoding.ASCII.GetBytes(name), .. data];
        var sum = uint.MaxValue;
        foreach (var b in named)
        {
            sum ^= b;
            for (var bit = 0; bit < 8; bit++)
            {
                sum = (sum & 1) != 0 ? sum >> 1 ^ 0xEDB88320 : sum >> 1;
            }
        }
        var framed = new byte[named.Length + 8];
        BinaryPrimitives.WriteInt32BigEndian(framed, data.Length);
        named.CopyTo(framed.AsSpan(4));
        BinaryPrimitives.WriteUInt32BigEndian(framed.AsSpan(framed.Length - 4), ~sum);
        return framed;
    }
}
