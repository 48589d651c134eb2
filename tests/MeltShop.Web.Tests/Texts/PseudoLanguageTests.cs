using Bunit;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Tests.Components;
using MeltShop.Web.Texts;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Localization;

namespace MeltShop.Web.Tests.Texts;

public sealed class PseudoLanguageTests : ComponentTest
{
    [Fact]
    public void Text_InThePseudoLanguage_StandsBetweenMarks()
    {
        Speak(PseudoLanguage.Culture);
        var text = Services.GetRequiredService<IStringLocalizer<States>>();

        Assert.Equal("⟦There are more than 3; only the first 3 are shown. Narrow the search to see the others.⟧", text["More", 3].Value);
    }

    [Fact]
    public void Text_InALanguageWithoutTranslation_IsEnglish()
    {
        Speak("pl-PL");

        Assert.Equal("Loading …", Services.GetRequiredService<IStringLocalizer<States>>()["Loading"].Value);
    }

    [Fact]
    public void Field_InThePseudoLanguage_HasNoWordOutsideMarks()
    {
        Speak(PseudoLanguage.Culture);
        var entry = new EntryForm().Quantity("kg", 0, 60000, isRequired: true);
        var field = Render<QuantityField>(parameters => parameters.Add(p => p.Entry, entry).Add(p => p.Label, "").Add(p => p.Unit, "kg"));
        field.Find("input").Change("x");

        Assert.Empty(Marks.WordsOutside(field.Nodes, "kg"));
        Assert.NotEmpty(field.FindAll(".field-error"));
    }
}
