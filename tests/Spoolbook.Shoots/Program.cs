// A term of plausible shoots, for tests and for measuring: OUT --productions 400 --seed 1
using System.Globalization;
using Spoolbook.Shoots;

if (args is not [var folder, ..])
{
    Console.Error.WriteLine("dotnet run --project tests/Spoolbook.Shoots -- OUT [--productions 400] [--seed 1] [--careful]");
    return 2;
}

var term = new TermOfShoots(
    Number("--seed", 1),
    Number("--productions", 400),
    args.Contains("--careful") ? MistakeRates.None : MistakeRates.Usual
);
term.WriteTo(folder);
Console.WriteLine($"{term.Productions} productions, {term.Rolls} rolls, {term.Takes} takes, {term.Mistakes} mistakes in {folder}");
return 0;

int Number(string option, int usual) =>
    Array.IndexOf(args, option) is >= 0 and var at && at + 1 < args.Length ? int.Parse(args[at + 1], CultureInfo.InvariantCulture) : usual;
