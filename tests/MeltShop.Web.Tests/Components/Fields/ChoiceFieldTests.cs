using Bunit;
using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Tests.Components.Fields;

public sealed class ChoiceFieldTests : ComponentTest
{
    [Theory]
    [InlineData(true, 1)]
    [InlineData(false, 0)]
    public void Keyboard_OfAFormThatAPressOpened_GoesOnHereWhereItIsTheFirst(bool takesFocus, int times)
    {
        var field = Render<ChoiceField>(parameters => parameters
            .Add(p => p.Entry, new EntryForm().Choice("kind")).Add(p => p.Label, "Kind").Add(p => p.Choices, [new("coin", "coin")]).Add(p => p.TakesFocus, takesFocus));

        Assert.Equal(times, field.FindAll("select[data-first]").Count);
    }

    [Fact]
    public void Choices_MoreThanOneLooksThrough_AreFoundByPartsOfTheirWordsAndNoneIsLeftOut()
    {
        var entry = new EntryForm().Choice("material");
        var field = Of(entry, 640);
        Assert.Equal(641, field.FindAll("option").Count); // and the empty one
        Assert.Equal("640 of 640 in the list", field.Find("[data-testid=choices-shown]").TextContent);

        field.Find("select").Change("7");
        field.Find("input").Input("SCRAP 63");

        Assert.Equal(["scrap 7", "scrap 63", "scrap 163", "scrap 263", "scrap 363", "scrap 463", "scrap 563", "scrap 630", "scrap 631", "scrap 632", "scrap 633", "scrap 634", "scrap 635", "scrap 636", "scrap 637", "scrap 638", "scrap 639"],
            field.FindAll("option").Skip(1).Select(option => option.TextContent)); // what was chosen stays
        Assert.Equal("16 of 640 in the list", field.Find("[data-testid=choices-shown]").TextContent);
        Assert.Equal("7", entry.Value);
    }

    [Theory]
    [InlineData(60, 0)]
    [InlineData(61, 1)]
    public void Search_OfAList_IsThereWhereTheListIsLong(int lines, int times) => Assert.Equal(times, Of(new EntryForm().Choice("material"), lines).FindAll("input[data-aside][form='']").Count);

    private IRenderedComponent<ChoiceField> Of(TextEntry entry, int lines) => Render<ChoiceField>(parameters => parameters
        .Add(p => p.Entry, entry).Add(p => p.Label, "Material").Add(p => p.Choices, [.. Enumerable.Range(0, lines).Select(n => new Choice($"{n}", $"scrap {n}"))]));
}
