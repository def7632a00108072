using Spoolbook.Intake.Tables;
using Spoolbook.Intake.Takes;
using Spoolbook.Reading.Files;

namespace Spoolbook.Intake;

/// <summary>A file with a table of takes in it: our workbook, or plain text.</summary>
static class TableFile
{
    static readonly byte[] _zip = [0x50, 0x4B];
    static readonly byte[] _compound = [0xD0, 0xCF, 0x11, 0xE0];

    /// <summary>The table in a file, told by what is in the file and not by its name.</summary>
    /// <exception cref="TableFault">Nothing can be read from it.</exception>
    public static TakeTable Read(string name, byte[] bytes, TakeHeads heads, Objections objections)
    {
        if (bytes.Length > Limits.MostBytes)
        {
            throw new TableFault(name, FormattableString.Invariant($"The file is longer than {Limits.MostBytes / 1_000_000} MB."), "See whether another file was saved under this name.");
        }

        if (bytes.AsSpan().StartsWith(_compound))
        {
            throw new TableFault(name, "The workbook is protected with a password, or saved in an old form.", "Take the password off, and save it as .xlsx.");
        }

        if (bytes.AsSpan().StartsWith(_zip))
        {
            throw new TableFault(name, "Workbooks cannot be read yet.", "Save the sheet as .csv.");
        }

        return TakeTable.Of(Text(name, bytes, heads), heads, objections);
    }

    static Table Text(string name, byte[] bytes, TakeHeads heads)
    {
        var file = TextDecoder.Decode(bytes);
        if (file.Fault is { } fault)
        {
            throw new TableFault(FormattableString.Invariant($"{name}:{fault.Line}"), fault.Message, fault.Help);
        }

        return CsvTable.Read(name, file.Text!, CsvTable.SeparatorOf(file.Text!, heads));
    }
}
