using PdfSharp.Fonts;

namespace MeltShop.Web.Printing;

/// <summary>The two faces that certificates are set in: shipped with the program, so that a document does not depend on what a computer has.</summary>
internal sealed class ShippedFonts : IFontResolver
{
    /// <summary>Name of the family.</summary>
    public const string Family = "DejaVu Sans Condensed";

    private const string Plain = "DejaVuSansCondensed.ttf";
    private const string Bold = "DejaVuSansCondensed-Bold.ttf";

    public FontResolverInfo? ResolveTypeface(string familyName, bool bold, bool italic) => new(bold ? Bold : Plain);

    public byte[]? GetFont(string faceName)
    {
        using var stream = typeof(ShippedFonts).Assembly.GetManifestResourceStream(faceName)!;
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
