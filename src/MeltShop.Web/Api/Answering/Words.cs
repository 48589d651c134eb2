using System.Globalization;
using System.Resources;
using MeltShop.Metallurgy;

namespace MeltShop.Web.Api.Answering;

/// <summary>
/// The one place where the API puts a finding into words: English, whatever the language of the person or the machine, for
/// a program's author reads them. Pages have their own texts, written for the one who stands at the field.
/// </summary>
internal static class Words
{
    private const string AllArguments = "{*}";

    private static readonly ResourceManager Resources = new(typeof(Words));

    /// <summary>The sentence for a finding, its arguments filled in.</summary>
    /// <exception cref="MissingManifestResourceException">The code has no text: a programmer's error.</exception>
    public static string For(Finding finding)
    {
        var text = Resources.GetString(finding.Code, CultureInfo.InvariantCulture)
            ?? throw new MissingManifestResourceException($"The finding '{finding.Code}' has no words.");
        return text.Contains(AllArguments, StringComparison.Ordinal)
            ? text.Replace(AllArguments, string.Join(", ", finding.Arguments), StringComparison.Ordinal)
            : string.Format(CultureInfo.InvariantCulture, text, [.. finding.Arguments]);
    }
}
