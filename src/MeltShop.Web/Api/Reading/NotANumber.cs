namespace MeltShop.Web.Api.Reading;

/// <summary>
/// Many a script writes NaN or Infinity where JSON knows no such thing. The body is unreadable then, but the caller is better
/// helped by the field: this puts a number that no double can hold in its place, so that the reader names the path.
/// </summary>
internal static class NotANumber
{
    /// <summary>The body with every bare <c>NaN</c> and <c>Infinity</c> outside a text made <c>1e999</c>; the sign stays.</summary>
    public static ReadOnlyMemory<byte> WithNumbersInPlace(ReadOnlySpan<byte> body)
    {
        var result = new List<byte>(body.Length + 16);
        var inText = false;
        for (var i = 0; i < body.Length; i++)
        {
            if (!inText && WordAt(body[i..]) is var length and > 0)
            {
                result.AddRange("1e999"u8);
                i += length - 1;
                continue;
            }

            result.Add(body[i]);
            if (inText && body[i] == '\\' && i + 1 < body.Length)
                result.Add(body[++i]);
            else if (body[i] == '"')
                inText = !inText;
        }

        return result.ToArray();
    }

    private static int WordAt(ReadOnlySpan<byte> rest) =>
        rest.StartsWith("NaN"u8) ? 3 : rest.StartsWith("Infinity"u8) ? 8 : 0;
}
