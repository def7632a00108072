using Spoolbook.Papers.Workbook;

namespace Spoolbook.Papers.Tests.Workbook;

/// <summary>Formulas are written in the house's terms, and are in the production's language in the file.</summary>
public class FormulaTextTests
{
    static readonly Dictionary<string, string> Heads = new()
    {
        ["Roll"] = "Rolle",
        ["From frame"] = "Von Bild",
        ["No good"] = "N.K.",
        ["Rate"] = "Preis [€], '26 #1",
    };

    [Theory]
    [InlineData("SUM(Rolls[Roll])", "SUM(Rolls[Rolle])")]
    [InlineData("[@Roll]&[@[From frame]]", "Takes[[#This Row],[Rolle]]&Takes[[#This Row],[Von Bild]]")]
    [InlineData("Film[[#This Row],[Roll]]", "Film[[#This Row],[Rolle]]")]
    [InlineData("INDEX(Takes[From frame],1):[@[From frame]]", "INDEX(Takes[Von Bild],1):Takes[[#This Row],[Von Bild]]")]
    [InlineData("Rolls[No good]", "Rolls[[N.K.]]")]
    [InlineData("Cost[Rate]", "Cost[[Preis '[€'], ''26 '#1]]")]
    [InlineData("[@Rate]", "Takes[[#This Row],[Preis '[€'], ''26 '#1]]")]
    [InlineData("""IF(Film[Roll]="short end","","a ""Roll"" [@Roll]")""", """IF(Film[Rolle]="SHORT END","","A ""ROLL"" [@ROLL]")""")]
    [InlineData("1+ROUND(FramesPerUnit,2)", "1+ROUND(FramesPerUnit,2)")]
    [InlineData("LOG10(NeededAt50)*24000/1001+IF(\"K5\"=\"\",1,2)", "LOG10(NeededAt50)*24000/1001+IF(\"K5\"=\"\",1,2)")]
    public void A_column_goes_by_its_head_and_words_in_quotes_are_no_column(string house, string file) =>
        Assert.Equal(file, FormulaText.Spell(house, "Takes", (_, head) => Heads[head], said => said.ToUpperInvariant()));

    [Fact]
    public void A_spelled_formula_can_be_read_again()
    {
        var spelled = FormulaText.Spell("Cost[Rate]*[@Rate]", "Cost", (_, head) => Heads[head], said => said);
        Assert.Equal(
            [new ColumnPiece("Cost", OfThisRow: false, Heads["Rate"]), new ColumnPiece("Cost", OfThisRow: true, Heads["Rate"])],
            FormulaText.Pieces(spelled).OfType<ColumnPiece>()
        );
    }

    [Theory]
    [InlineData("SUM(Rolls[Roll)")]
    [InlineData("IF(A1=\"open,1)")]
    [InlineData("Rolls[[#Totals],[Roll]]")]
    [InlineData("Rolls[#Headers]")]
    [InlineData("Summary!B4")]
    [InlineData("'Short ends'!A1")]
    [InlineData("SUM(K5:K9)")]
    [InlineData("[@Roll]+$B$4")]
    [InlineData("SUM(INDEX(Rolls[Roll],1):A9)")]
    [InlineData("SUM(K:K)")]
    [InlineData("ROWS(1:5)")]
    public void An_ambiguous_formula_is_refused(string formula) =>
        Assert.Throws<FormatException>(() => FormulaText.Spell(formula, "Takes", (_, head) => head, said => said));
}
