using Bunit;
using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Tests.Components.Fields;

public sealed class QuantityFieldTests : ComponentTest
{
    private readonly EntryForm form = new();

    [Theory]
    [InlineData("3.55")]
    [InlineData("3,55")]
    public void Typed_CommaOrPoint_IsEchoedWithItsUnit(string text)
    {
        var field = Draw(form.Quantity("price", 0, 9999));
        field.Find("input").Change(text);

        Assert.Equal("read as 3.55 €/t", field.Find(".field-note").TextContent);
        Assert.Equal(text, field.Find("input").GetAttribute("value"));
    }

    [Fact]
    public void Typed_InGerman_IsEchoedWithAComma()
    {
        Speak("de-DE");
        var field = Draw(form.Quantity("price", 0, 9999));
        field.Find("input").Change("3.55");

        Assert.Equal("read as 3,55 €/t", field.Find(".field-note").TextContent);
    }

    [Fact]
    public void Typed_NoNumber_IsToldAtTheFieldAndKept()
    {
        var field = Draw(form.Quantity("price", 0, 9999));
        field.Find("input").Change("12 euro");

        Assert.Equal("number.notANumber", field.Find(".field-error").GetAttribute("data-code"));
        Assert.Equal("12 euro", field.Find("input").GetAttribute("value"));
        Assert.Equal("true", field.Find("input").GetAttribute("aria-invalid"));
        Assert.Equal(field.Find(".field-error").Id, field.Find("input").GetAttribute("aria-describedby"));
    }

    [Fact]
    public void Typed_TwoReadings_AreOfferedAndOneIsTaken()
    {
        var entry = form.Quantity("price", 0, 9999);
        var field = Draw(entry);
        field.Find("input").Change("1,250");
        var choices = field.FindAll(".field-choices button");
        Assert.Equal(["1.25 €/t", "1250 €/t"], choices.Select(choice => choice.TextContent.Trim()));
        choices[1].Click();

        Assert.Equal(1250, entry.Value);
        Assert.Empty(field.FindAll(".field-choices"));
    }

    [Fact]
    public void Drawn_Empty_SaysTheRange() => Assert.Contains("0 to 9999", Draw(form.Quantity("price", 0, 9999)).Find(".field-note").TextContent, StringComparison.Ordinal);

    [Fact]
    public void Label_BelongsToItsInput()
    {
        var field = Draw(form.Quantity("price", 0, 9999));

        Assert.Equal(field.Find("input").Id, field.Find("label").GetAttribute("for"));
        Assert.Equal("text", field.Find("input").GetAttribute("type"));
        Assert.False(field.Find("input").HasAttribute("inputmode"));
    }

    [Fact]
    public void Help_WithAFormula_SaysWhereItComesFromAndHolds()
    {
        var formula = MeltShop.Metallurgy.Treatment.MagnesiumFloor.Formula;
        var help = Render<QuantityField>(parameters => parameters.Add(p => p.Entry, form.Quantity("mg")).Add(p => p.Label, "Mg").Add(p => p.Unit, "%").Add(p => p.Formula, formula))
            .Find("[data-testid=formula-help]").TextContent;

        Assert.Contains(formula.Expression, help, StringComparison.Ordinal);
        Assert.Contains(formula.Range, help, StringComparison.Ordinal);
        Assert.Contains(formula.Sources[0].ToString(), help, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(true, null, true, true)]
    [InlineData(false, 0.0, false, false)]
    public void Keypad_OfAField_HasBelowAndMinusWhereTheFieldTakesThem(bool allowsBelow, double? least, bool below, bool minus)
    {
        var input = Draw(form.Quantity("price", least, 9999, allowsBelow: allowsBelow)).Find("input");

        Assert.Equal((below, minus), (input.HasAttribute("data-below"), input.HasAttribute("data-minus")));
    }

    private IRenderedComponent<QuantityField> Draw(QuantityEntry entry) =>
        Render<QuantityField>(parameters => parameters.Add(p => p.Entry, entry).Add(p => p.Label, "Price").Add(p => p.Unit, "€/t"));
}
