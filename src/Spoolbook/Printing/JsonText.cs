using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace Spoolbook.Printing;

/// <summary>JSON for programs, written the same way by every command.</summary>
internal static class JsonText
{
    static readonly JsonWriterOptions _options = new()
    {
        Indented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>One object as text.</summary>
    public static string Object(Action<Utf8JsonWriter> write)
    {
        using var buffer = new MemoryStream();
        using (var json = new Utf8JsonWriter(buffer, _options))
        {
            json.WriteStartObject();
            write(json);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(buffer.GetBuffer(), 0, (int)buffer.Length);
    }

    /// <summary>A list of objects under a name.</summary>
    public static void Objects<T>(this Utf8JsonWriter json, string name, IEnumerable<T> items, Action<Utf8JsonWriter, T> write)
    {
        json.WriteStartArray(name);
        foreach (var item in items)
        {
            json.WriteStartObject();
            write(json, item);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>An object under a name.</summary>
    public static void Object(this Utf8JsonWriter json, string name, Action<Utf8JsonWriter> write)
    {
        json.WriteStartObject(name);
        write(json);
        json.WriteEndObject();
    }
}
