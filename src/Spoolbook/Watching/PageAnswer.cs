using System.Globalization;
using System.Text;
using Spoolbook.Reading.Files;
using Spoolbook.Writing;

namespace Spoolbook.Watching;

/// <summary>What a browser gets: a paper that Spoolbook made in this folder, or a word on why not.</summary>
internal static class PageAnswer
{
    const string Html = "text/html; charset=utf-8";

    // A page allows no script of its own; here it allows the one that waits.
    const string NoScript = "default-src 'none'; style-src",
        OneScript = "default-src 'none'; script-src 'unsafe-inline'; connect-src 'self'; style-src";

    public static byte[] To(PageRequest request, string folder, long made)
    {
        if (request.Status != 200)
        {
            return Write(request.Status, "text/plain", Encoding.ASCII.GetBytes(ReasonOf(request.Status)), request.IsHead);
        }

        if (request.Since is not null)
        {
            return Write(200, "text/plain", Encoding.ASCII.GetBytes(made.ToString(CultureInfo.InvariantCulture)), request.IsHead);
        }

        return Paper(folder, request.Name) is { } bytes
            ? Write(200, TypeOf(request.Name), IsPage(request.Name) ? Reloading(bytes, made) : bytes, request.IsHead)
            : Write(404, "text/plain", "There is no such paper.\n"u8.ToArray(), request.IsHead);
    }

    // Only what is on the list of papers, whatever else lies there, and no link.
    static byte[]? Paper(string folder, string name)
    {
        if (!PaperManifest.Read(folder).ContainsKey(name))
        {
            return null;
        }

        var path = Path.Combine(folder, name);
        return FileState.LinkTarget(path) is null && File.Exists(path) && OrdinaryFile.InsteadOf(path) is null
            ? File.ReadAllBytes(path)
            : null;
    }

    static byte[] Reloading(byte[] page, long made)
    {
        var text = Encoding.UTF8.GetString(page).Replace(NoScript, OneScript, StringComparison.Ordinal);
        var script = string.Create(
            CultureInfo.InvariantCulture,
            $$"""
            <script>
            (async () => {
              for (;;) {
                try {
                  const made = await (await fetch("{{PageRequest.Waiting}}{{made}}")).text();
                  if (made !== "{{made}}") { location.reload(); return; }
                } catch {
                  await new Promise(done => setTimeout(done, 1000));
                }
              }
            })();
            </script>

            """
        );
        var end = text.LastIndexOf("</body>", StringComparison.Ordinal);
        return Encoding.UTF8.GetBytes(end < 0 ? text + script : text.Insert(end, script));
    }

    static bool IsPage(string name) => name.EndsWith(".html", StringComparison.Ordinal);

    static string TypeOf(string name) =>
        Path.GetExtension(name) switch
        {
            ".html" => Html,
            ".pdf" => "application/pdf",
            ".json" => "application/json",
            ".xlsx" => "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
            _ => "application/octet-stream",
        };

    static string ReasonOf(int status) =>
        status switch
        {
            200 => "OK",
            400 => "Bad Request",
            404 => "Not Found",
            405 => "Method Not Allowed",
            _ => "Misdirected Request",
        };

    static byte[] Write(int status, string type, byte[] body, bool isHead)
    {
        var head = string.Create(
            CultureInfo.InvariantCulture,
            $"HTTP/1.1 {status} {ReasonOf(status)}\r\nContent-Type: {type}\r\nContent-Length: {body.Length}\r\nCache-Control: no-store\r\n"
                + $"X-Content-Type-Options: nosniff\r\nCross-Origin-Resource-Policy: same-origin\r\nReferrer-Policy: no-referrer\r\n"
                + $"Connection: close\r\n\r\n"
        );
        return [.. Encoding.ASCII.GetBytes(head), .. isHead ? [] : body];
    }
}
