using Spoolbook.Papers.Pages;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Papers.Tests.Pages;

public class SandboxTests
{
    static readonly object Facts = new
    {
        Rows = Enumerable.Range(0, 1000).Select(i => i).ToArray(),
        Text = new string('x', 1000),
        Holder = new Holder(),
    };

    const string Joined = "{{ x = rows | array.join x }}";

    sealed class Holder
    {
        public string Name { get; set; } = "as it was";

        public string Call() => "called";
    }

    [Theory]
    [InlineData("{{ while true }}{{ end }}", "'while'")]
    [InlineData("{{ for a in rows; for b in rows; for c in rows; d = c; end; end; end }}", "limit")]
    [InlineData("{{ for a in rows }}{{ for b in rows }}<p>{{ text }}</p>{{ end }}{{ end }}", "eight million")]
    [InlineData(
        "{{ for a in rows; for b in rows; c = b == a; c = b > a; c = b < a; c = b != a; c = b == 1; c = a == 1; c = b == 2; end; end }}",
        "does not end"
    )]
    [InlineData("{{ func f; f; end; f }}", "functions")]
    [InlineData("{{ f = do; ret 1; end }}", "")]
    [InlineData("{{ x = 'a' * 1000000000 }}", "calculate")]
    [InlineData("{{ x = 1 << 1000000000 }}", "calculate")]
    [InlineData("{{ 1..2000000000 | array.size }}", "calculate")]
    [InlineData("{{ x = -rows[0] }}", "calculate")]
    [InlineData("{{ rows[0]++ }}", "")]
    [InlineData("{{ capture x }}a{{ end }}", "'capture'")]
    [InlineData("{{ x = $'{text}{text}' }}", "interpolated")]
    [InlineData("{{ holder.name = 'changed' }}", "only a variable")]
    [InlineData("{{ holder.call }}", "")]
    [InlineData("{{ date.now }}", "date")]
    [InlineData("{{ math.random 1 9 }}", "math")]
    [InlineData("{{ 'aaa' | regex.match 'a*' }}", "regex")]
    [InlineData("{{ object.eval '1' }}", "object")]
    [InlineData("{{ text | string.pad_left 1000000000 }}", "pad_left")]
    [InlineData("{{ text | string.append text }}", "append")]
    [InlineData("{{ import rows }}", "")]
    [InlineData("{{ x = text }}" + Joined + Joined + Joined + Joined + "{{ x }}", "hundred thousand")]
    [InlineData("{{ x = [text, text, text] }}", "lists of its own")]
    [InlineData("{{ x = {a: text} }}", "groups of values of its own")]
    [InlineData("{{ rows[2000000000] = 1 }}", "only a variable")]
    [InlineData("{{ rows | string.upcase }}", "to use as text")]
    [InlineData("{{ rows | array.join rows }}", "to use as text")]
    [InlineData("{{ include rows }}", "to use as text")]
    [InlineData("{{ 'x' | html.strip }}", "html")]
    [InlineData("{{ timespan.from_days 1 }}", "timespan")]
    [InlineData("{{ text | string.replace 'x' text }}", "replace")]
    [InlineData("{{ text | string.split '' }}", "split")]
    [InlineData("{{ rows | array.concat rows }}", "concat")]
    [InlineData("{{ rows | array.each @string.upcase }}", "calculate")]
    [InlineData("{{ text | string.to_int }}", "to_int")]
    [InlineData("{{ include 'page.html' }}", "recursive")]
    [InlineData("{{ include '../secret.html' }}", "plain name")]
    [InlineData("{{ include '/etc/passwd' }}", "plain name")]
    [InlineData("{{ include 'C:\\\\secret.html' }}", "plain name")]
    [InlineData("{{ include '..' }}", "plain name")]
    public void A_hostile_template_ends_with_a_fault(string code, string reason)
    {
        var result = Templates.Render("<article>" + code + "</article>", Facts);
        Assert.Null(result.Document);
        var fault = result.Faults[0];
        Assert.Contains(reason, fault.Reason, StringComparison.OrdinalIgnoreCase);
        Assert.Equal(("page.html", 1), (fault.File, fault.Line));
        Assert.InRange(fault.Column, "<article>".Length + 1, "<article>".Length + code.Length);
        Assert.Equal("as it was", new Holder().Name);
    }

    [Fact]
    public void A_long_shoot_prints_all_its_pictures_and_a_template_cannot_pile_them_up()
    {
        const string All = "{{ for picture in pictures; picture; end }}";
        var facts = new { Pictures = Enumerable.Range(0, 10).Select(_ => new Markup($"<p>{new string('x', 1_000_000)}</p>")).ToArray() };

        Assert.Empty(Templates.Render($"<article>{All}</article>", facts).Faults);
        Assert.Contains(
            "eight million",
            Templates.Render($"<article>{All}{All}</article>", facts).Faults[0].Reason,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Blocks_in_blocks_without_end_are_stopped_before_they_cost_the_stack()
    {
        var deep = string.Concat(Enumerable.Repeat("{{ if true }}", 20_000));
        Assert.Contains("nested more than", Templates.Render("<article>" + deep + "</article>").Faults[0].Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Brackets_in_brackets_without_end_are_stopped_too()
    {
        var deep = "{{ x = " + new string('(', 20_000) + "1" + new string(')', 20_000) + " }}";
        Assert.NotEmpty(Templates.Render("<article>" + deep + "</article>").Faults);
    }

    [Fact]
    public void Elements_in_elements_without_end_are_a_fault()
    {
        var deep = string.Concat(Enumerable.Repeat("<div>", 500)) + string.Concat(Enumerable.Repeat("</div>", 500));
        Assert.Contains("nested more than", Templates.Render("<article>" + deep + "</article>").Faults[0].Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_inclusions_at_every_level_come_to_an_end()
    {
        var source = new Templates(
            ("page.html", "<article>{{ include 'a.html' }}</article>"),
            ("a.html", "{{ include 'a.html' }}{{ include 'a.html' }}")
        );
        Assert.NotEmpty(TemplateEngine.Render(source, "page.html", Facts).Faults);
    }

    [Fact]
    public void The_arguments_of_an_included_file_cannot_be_piled_up()
    {
        var source = new Templates(
            ("page.html", "<article>{{ include 'a.html' x: 1 }}</article>"),
            ("a.html", "{{ include 'a.html' x: $ y: $ z: $ }}")
        );
        Assert.Contains(
            "'$' cannot be passed on as 'x'",
            TemplateEngine.Render(source, "page.html", Facts).Faults[0].Reason,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_file_that_its_folder_refuses_is_flagged_at_the_line_that_includes_it()
    {
        var fault = Assert.Single(TemplateEngine.Render(new Refusing(), "page.html", Facts).Faults);
        Assert.Equal(("page.html", 2, 4, "'out.html' leads out of the folder"), (fault.File, fault.Line, fault.Column, fault.Reason));
        Assert.Equal("leads out of the folder", TemplateEngine.Render(new Refusing(), "out.html", Facts).Faults[0].Reason);
    }

    sealed class Refusing : ITemplateSource
    {
        public TemplateText? Find(string name) =>
            name == "page.html"
                ? new TemplateText(name, "<article>\n{{ include 'out.html' }}</article>")
                : new TemplateText(name, "") { Refused = Sentence.Plain("leads out of the folder") };
    }

    [Fact]
    public void A_list_of_a_thousand_rows_is_nothing_hostile()
    {
        var page = Templates.Page("<article>{{ for r in rows }}<p>{{ r }}</p>{{ end }}</article>", Facts);
        Assert.Equal(1000, page.Root.Elements().Count());
    }
}
