using System.Text.Json;
using MeltShop.Metallurgy;

namespace MeltShop.Web.Api.Reading;

/// <summary>Makes a reader of a request's bytes, or says at <c>$</c> why they cannot be read.</summary>
internal static class RequestBody
{
    /// <summary>Greatest size of a body: room for some thousand materials, none for mischief.</summary>
    public const int GreatestBytes = 1024 * 1024;

    // The contract nests five deep; more is a mistake, or an attack on the stack.
    private static readonly JsonDocumentOptions Options = new() { MaxDepth = 16 };

    /// <summary>Reads with <paramref name="read"/>; its answer is null where there are findings.</summary>
    public static (T? Request, IReadOnlyList<Finding> Findings) Read<T>(ReadOnlyMemory<byte> body, Func<ObjectReader, T> read)
        where T : class
    {
        var findings = new List<Finding>();
        body = WithoutByteOrderMark(body);
        using var document = Parse(body, findings) ?? Parse(NotANumber.WithNumbersInPlace(body.Span), []);
        if (document is null) return (null, findings);

        if (document.RootElement.ValueKind != JsonValueKind.Object) return (null, [.. findings, new("$", "body.noObject")]);

        var reader = new ObjectReader(document.RootElement, "", findings);
        var request = read(reader);
        reader.RefuseTheRest();
        return (findings.Count == 0 ? request : null, findings);
    }

    private static JsonDocument? Parse(ReadOnlyMemory<byte> body, List<Finding> findings)
    {
        if (body.Length == 0)
        {
            findings.Add(new("$", "body.empty"));
            return null;
        }

        JsonDocument? document = null;
        try
        {
            document = JsonDocument.Parse(body, Options);
            RequireText(document.RootElement);
            return document;
        }
        catch (JsonException fault)
        {
            findings.Add(new("$", "body.unreadable", (fault.LineNumber ?? 0) + 1, (fault.BytePositionInLine ?? 0) + 1));
        }
        catch (InvalidOperationException)
        {
            findings.Add(new("$", "body.brokenText"));
        }

        document?.Dispose();
        return null;
    }

    /// <summary>Touches every text: half a surrogate pair is legal to the parser and throws only when read.</summary>
    private static void RequireText(JsonElement element)
    {
        if (element.ValueKind == JsonValueKind.String) _ = element.GetString();
        if (element.ValueKind == JsonValueKind.Array)
        {
            foreach (var item in element.EnumerateArray()) RequireText(item);
        }

        if (element.ValueKind != JsonValueKind.Object) return;
        foreach (var field in element.EnumerateObject())
        {
            _ = field.Name;
            RequireText(field.Value);
        }
    }

    private static ReadOnlyMemory<byte> WithoutByteOrderMark(ReadOnlyMemory<byte> body) =>
        body.Span.StartsWith("\uFEFF"u8) ? body[3..] : body;
}
