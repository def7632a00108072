using System.Collections.Immutable;
using System.CommandLine;
using System.Text.Json;
using Spoolbook.Printing;
using Spoolbook.Reading.Files;
using Spoolbook.Writing;

namespace Spoolbook.Tests;

/// <summary>A mistake of Spoolbook's own: what was found so far, one sentence, no stack trace.</summary>
public sealed class LastResortTests
{
    [Fact]
    public void A_fault_in_reading_names_the_file_and_how_to_report_it()
    {
        var (status, said, error) = Run(around => Pipeline.Run(new BreakingFiles("stock.yaml"), around.Progress));

        Assert.Equal(70, status);
        Assert.StartsWith("spoolbook: it broke while reading stock.yaml (OverflowException)", error, StringComparison.Ordinal);
        Assert.Contains("Nothing that was made is lost", error, StringComparison.Ordinal);
        Assert.Contains("Report it", error, StringComparison.Ordinal);
        Assert.Equal(1, error.Count(c => c == '\n'));
        Assert.Contains("[spoolbook/fault]", said, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", said + error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_fault_in_printing_does_not_hide_what_was_found()
    {
        var (status, said, error) = Run(around => Pipeline.Run(Repository.Sample, around, new BreakingStages()));

        Assert.Equal(70, status);
        Assert.Contains("[speed/spring-overrun]", said, StringComparison.Ordinal);
        Assert.Contains("Checked in part: 1 error", said, StringComparison.Ordinal);
        Assert.Contains("while printing", error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_program_that_asked_for_json_gets_json_with_the_fault_in_it()
    {
        var (_, said, _) = Run(around => Pipeline.Run(Repository.Sample, around, new BreakingStages()), FindingFormat.Json);

        using var json = JsonDocument.Parse(said);
        Assert.Equal(1, json.RootElement.GetProperty("counts").GetProperty("errors").GetInt32());
    }

    [Fact]
    public void Findings_that_are_printed_already_are_not_printed_again()
    {
        var (_, said, _) = Run(around =>
        {
            var findings = new FindingPrinter(Repository.Sample, FindingFormat.Text, around);
            findings.Print(Pipeline.Run(Repository.Sample, around).Found);
            throw new OverflowException();
        });

        Assert.Equal(2, said.Split("[speed/spring-overrun]").Length);
    }

    [Fact]
    public void A_stack_trace_is_printed_only_when_it_is_asked_for()
    {
        var (status, _, error) = Run(_ => throw new OverflowException(), trace: true);

        Assert.Equal(70, status);
        Assert.Contains("   at ", error, StringComparison.Ordinal);
    }

    [Fact]
    public void Output_that_cannot_be_written_is_one_sentence_and_status_3()
    {
        using var closed = new ClosedWriter();
        using var error = new StringWriter();
        var around = new CommandEnvironment(closed, error, Repository.Root, Workbench.Made, Colour: false, Width: 100);

        Assert.Equal(3, SpoolbookApp.Run(["check", Repository.Sample], around));
        Assert.StartsWith("spoolbook: what it has to say cannot be written out", error.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", error.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Nobody_left_to_hear_it_is_no_fault_either()
    {
        using var closed = new ClosedWriter();
        var around = new CommandEnvironment(closed, closed, Repository.Root, Workbench.Made, Colour: false, Width: 100);

        Assert.Equal(3, SpoolbookApp.Run(["check", Repository.Sample], around));
    }

    static (int Status, string Out, string Error) Run(
        Action<CommandEnvironment> action,
        FindingFormat format = FindingFormat.Text,
        bool trace = false
    )
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        var around = new CommandEnvironment(output, error, Repository.Root, Workbench.Made, Colour: false, Width: 100) { Trace = trace };
        var command = new Command("break", "Breaks.");
        command.SetAction(parsed =>
        {
            _ = new FindingPrinter(Repository.Sample, format, around);
            action(around);
            return 0;
        });
        var status = CommandLine.Run(["break"], around, [command]);
        return (status, output.ToString(), error.ToString());
    }

    sealed class BreakingFiles(string file) : IProductionFiles
    {
        readonly FolderFiles _files = new(Repository.Sample);

        public bool IsOneFile => false;

        public ImmutableArray<string> Names => _files.Names;

        public FileText Open(string name) => name == file ? throw new OverflowException() : _files.Open(name);

        public PictureFile OpenPicture(string path) => _files.OpenPicture(path);
    }

    sealed class BreakingStages : IPaperStages
    {
        public bool Draft => false;

        public WorkFolder Folder => throw new NotSupportedException();

        public PrintingStage Print(CheckedProduction found) => throw new OverflowException();
    }

    sealed class ClosedWriter : StringWriter
    {
        public override void Flush() => throw new IOException("Bad file descriptor");

        public override void Write(char value) => throw new IOException("Bad file descriptor");

        public override void Write(string? value) => throw new IOException("Bad file descriptor");
    }
}
