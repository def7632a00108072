using Spoolbook.Papers.CanLabels;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Tests.Typesetting;
using Spoolbook.Papers.Typesetting.Setup;

namespace Spoolbook.Papers.Tests.CanLabels;

public sealed class QrPictureTests : IDisposable
{
    readonly string _folder = Directory.CreateTempSubdirectory("spoolbook").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [ToolFact("zbarimg")]
    public void A_code_printed_and_held_before_a_camera_gives_back_its_text()
    {
        string[] texts =
        [
            "HERON/R03/5",
            "FERRY-2/R 12/A",
            "heron/rolle-ß/9",
            "СОЛЬ/Ролик №7/Ω",
            "A-VERY-LONG-PRODUCTION-CODE-OF-SIXTY-LETTERS-AND-SOME-MORE-IT/R0000000000040/Z",
        ];

        foreach (var text in texts)
        {
            Assert.Equal(text, Read(Sheet(text)));
        }
    }

    [ToolFact("zbarimg")]
    public void A_code_of_three_centimetres_is_read_from_a_coarse_print_in_grey() =>
        Assert.Equal("HERON/R03/5", Read(Sheet("HERON/R03/5"), "-r", "80", "-gray"));

    [Fact]
    public void A_code_is_one_path_on_its_own_white_with_its_words_beside_it()
    {
        var svg = QrPicture.Draw("HERON/R03/5", "Code of can R03");

        Assert.Equal(2, svg.Split("<path").Length);
        Assert.Equal(2, svg.Split("<rect").Length);
        Assert.Contains("<title>Code of can R03</title><desc>HERON/R03/5</desc>", svg, StringComparison.Ordinal);
    }

    [Fact]
    public void A_code_has_four_modules_of_white_around_it()
    {
        // ISO/IEC 18004: the quiet zone is four modules wide; the finder pattern, seven dark modules, begins after it.
        Assert.Contains("d=\"M4 4h7v1h-7z", QrPicture.Draw("HERON/R03/5", "Code"), StringComparison.Ordinal);
    }

    string Sheet(string text)
    {
        var file = Path.Combine(_folder, "code.pdf");
        File.WriteAllBytes(
            file,
            Printed
                .Of(
                    "<figure class=\"w2\">{{ code }}</figure>",
                    new PageSetup(Paper.A4),
                    new { Code = new Markup(QrPicture.Draw(text, "Code")) }
                )
                .Bytes
        );
        return file;
    }

    string Read(string pdf, params string[] how)
    {
        var picture = Path.Combine(_folder, "code");
        var (drawn, said) = Tools.Run("pdftoppm", [.. how.Length == 0 ? ["-r", "150"] : how, "-png", "-singlefile", pdf, picture]);
        Assert.True(drawn == 0, said);
        return Tools.Run("zbarimg", "--quiet", "--raw", picture + ".png").Output.Split('\n')[0];
    }
}
