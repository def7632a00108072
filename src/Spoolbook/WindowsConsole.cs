using System.Runtime.InteropServices;
using System.Text;

namespace Spoolbook;

/// <summary>
/// A Windows console shows UTF-8 and colours only if a program asks for it. Elsewhere nothing is to be done. What goes to a file or a
/// pipe is UTF-8 anyway.
/// </summary>
internal static class WindowsConsole
{
    const int StandardOutput = -11;

    const int StandardError = -12;

    // https://learn.microsoft.com/windows/console/setconsolemode : ENABLE_VIRTUAL_TERMINAL_PROCESSING
    const uint Colours = 0x0004;

    public static void SetUp()
    {
        if (!OperatingSystem.IsWindows())
        {
            return;
        }

        try
        {
            // Neither changes anything for a file or a pipe: there is no console behind the handle then.
            if (!Console.IsOutputRedirected || !Console.IsErrorRedirected)
            {
                Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
            }

            if (!Console.IsInputRedirected)
            {
                Console.InputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
            }

            foreach (var name in (int[])[StandardOutput, StandardError])
            {
                var handle = GetStdHandle(name);
                if (GetConsoleMode(handle, out var mode) != 0)
                {
                    _ = SetConsoleMode(handle, mode | Colours);
                }
            }
        }
        catch (Exception e) when (e is IOException or EntryPointNotFoundException)
        {
            // An old console shows letters of its code page, and the program runs all the same.
        }
    }

    // All of it is figures, so nothing is generated to carry it over.
    [DllImport("kernel32.dll")]
    static extern nint GetStdHandle(int name);

    [DllImport("kernel32.dll")]
    static extern int GetConsoleMode(nint handle, out uint mode);

    [DllImport("kernel32.dll")]
    static extern int SetConsoleMode(nint handle, uint mode);
}
