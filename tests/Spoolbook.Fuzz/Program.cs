using System.Globalization;
using Spoolbook.Fuzz.Running;
using Spoolbook.Fuzz.Targets;

const string Usage = "scripts/fuzz TARGET|all MINUTES, scripts/fuzz --replay TARGET FILE, scripts/fuzz --report";

var state = Option("--state") ?? "artifacts/fuzz";
var corpus = Option("--corpus") ?? "tests/Spoolbook.Fuzz/corpus";
string[] options = ["--state", state, "--corpus", corpus];
string[] words = [.. args.Where((a, i) => a is not ("--state" or "--corpus") && (i == 0 || args[i - 1] is not ("--state" or "--corpus")))];
switch (words)
{
    case ["--work", var target, var seconds]:
        using (var worker = new Worker(PlacesOf(target), target))
        {
            return worker.Work(Number(seconds));
        }

    case ["--replay", var target, var file]:
        return Replay.Run(target, File.ReadAllBytes(file));

    case ["--report"]:
        Console.WriteLine(Report.Head);
        foreach (var target in TargetList.Names)
        {
            Console.WriteLine(Report.Line(target, PlacesOf(target)));
            Report.Finds(PlacesOf(target)).ForEach(f => Console.WriteLine("  " + f));
        }

        return 0;

    case [var name, var minutes] when name == "all" || TargetList.Names.Contains(name):
        Console.WriteLine(Report.Head);
        foreach (var target in TargetList.Names.Where(t => name == "all" || t == name))
        {
            PlacesOf(target).Make();
            new Supervisor(PlacesOf(target), target, options).Run(Number(minutes) * 60);
            Report.Finds(PlacesOf(target)).ForEach(f => Console.WriteLine("  " + f));
        }

        return 0;

    default:
        Console.Error.WriteLine(Usage + "\nTargets: " + string.Join(", ", TargetList.Names));
        return 2;
}

Places PlacesOf(string target) => new(state, corpus, target);

string? Option(string name) => Array.IndexOf(args, name) is var at and >= 0 && at + 1 < args.Length ? args[at + 1] : null;

static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
