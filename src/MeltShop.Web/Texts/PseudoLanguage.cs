using System.Globalization;
using Microsoft.Extensions.Localization;

namespace MeltShop.Web.Texts;

/// <summary>
/// A language that nobody speaks: every text of the resources, between marks. A word without marks on a page in this
/// language did not come from the resources.
/// </summary>
public sealed class PseudoLanguage(IStringLocalizerFactory texts) : IStringLocalizerFactory
{
    public const string Culture = "qps-Ploc";
    public const string Opening = "⟦";
    public const string Closing = "⟧";

    private static bool IsSpoken => CultureInfo.CurrentUICulture.Name.Equals(Culture, StringComparison.OrdinalIgnoreCase);

    public IStringLocalizer Create(Type resourceSource) => new Marked(texts.Create(resourceSource));

    public IStringLocalizer Create(string baseName, string location) => new Marked(texts.Create(baseName, location));

    private static LocalizedString Mark(LocalizedString text) =>
        IsSpoken ? new(text.Name, Opening + text.Value + Closing, text.ResourceNotFound) : text;

    private sealed class Marked(IStringLocalizer texts) : IStringLocalizer
    {
        public LocalizedString this[string name] => Mark(texts[name]);

        public LocalizedString this[string name, params object[] arguments] => Mark(texts[name, arguments]);

        public IEnumerable<LocalizedString> GetAllStrings(bool includeParentCultures) =>
            texts.GetAllStrings(includeParentCultures).Select(Mark);
    }
}
