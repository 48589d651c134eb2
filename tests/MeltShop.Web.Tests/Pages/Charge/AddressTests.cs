using Bunit;
using MeltShop.Operations.Yard;
using MeltShop.Records.People;
using MeltShop.Records.Reading.Yard;
using MeltShop.Web.Components.Reading;

namespace MeltShop.Web.Tests.Pages.Charge;

/// <summary>A charge page that is loaded anew goes on with the plan that somebody looked at: all that was chosen stands in its address.</summary>
public sealed class AddressTests : ChargeTest
{
    [Fact]
    public void Wishes_OfTheAddress_AreThoseOfThePlan()
    {
        var page = Open(Chosen + "&wish=out@materials.pig&wish=1.6@limits.Si.least&wish=95@confidencePercent&wish=out@bins.Bin 7&wish=nonsense&wish=5@materials.nobody.minKg&wish=NaN@heelKg");
        WaitForPlan(page);

        Assert.DoesNotContain("pig", InPlan(page));
        Assert.Equal("95", Value(page, "confidencePercent"));
        Assert.Equal("", Value(page, "heelKg"));
        Assert.Contains("Bin 7", page.Find("[data-testid=bins] summary").TextContent, StringComparison.Ordinal);
        page.Find("[data-limit=Si] button").Click();
        Assert.Equal("1.6", Value(page, "limits.Si.least"));
    }

    [Fact]
    public void Charge_ByHandInTheAddress_IsThatOfThePerson()
    {
        var page = Open(Chosen + "&wish=own@byHand.&wish=1900.5@byHand.steel&wish=12@byHand.nobody");
        page.WaitForState(() => page.FindAll("[data-testid=by-hand]").Count > 0, Patience);

        Assert.Equal("1900.5", Value(page, "byHand.steel"));
        Assert.Empty(page.FindAll("[data-field=\"byHand.nobody\"]"));
    }

    [Theory]
    [InlineData("3.9@limits.C.least", "limits.C.least", "3.6")]
    [InlineData("900000@materials.pig.minKg", "materials.pig.minKg", "")]
    public void Wish_ThatIsRefused_StandsAtItsFieldAndCanBePutRight(string wish, string path, string right)
    {
        var page = Open(Chosen + "&wish=" + wish);
        page.WaitForState(() => page.FindAll($"[data-testid=marked] [data-field=\"{path}\"] .field-error").Count > 0, Patience);

        Assert.Equal(wish.Split('@')[0], Value(page, path));
        page.Find($"[data-field=\"{path}\"] input").Change(right);
        WaitForPlan(page);
        Assert.Empty(page.FindAll("[data-testid=marked]"));
    }

    [Theory]
    [InlineData("30@confidencePercent", "confidencePercent", "95")]
    [InlineData("101@groups.PigIron.minPercent", "groups.PigIron.minPercent", "")]
    [InlineData("0.2@wishes.energyPricePerKWh", "wishes.meltingKWhPerTonne", "600")]
    public void Wish_ThatIsRefusedBehindAFold_OpensItAndItStaysOpen(string wish, string path, string right)
    {
        var page = Open(Chosen + "&wish=" + wish);
        page.WaitForState(() => page.FindAll($"details[data-testid=for-metallurgist][open] [data-field=\"{path}\"] .field-error").Count > 0, Patience);

        page.Find($"[data-field=\"{path}\"] input").Change(right);
        WaitForPlan(page);
        Assert.NotEmpty(page.FindAll("details[data-testid=for-metallurgist][open]"));
    }

    [Fact]
    public void Wishes_Chosen_GoIntoTheAddressAsTheRecordsHaveThem()
    {
        var page = OpenPlanned(Role.Metallurgist);
        page.Find("[data-material=pig] button").Click();
        Type(page, "materials.pig.maxKg", "1250,5");
        page.WaitForAssertion(() => Assert.Equal(["1250.5@materials.pig.maxKg"], Said), Patience);
        page.Find("[data-testid=material-choices] input[type=checkbox]").Change(true);
        page.WaitForAssertion(() => Assert.Equal(["out@materials.pig", "1250.5@materials.pig.maxKg"], Said), Patience);

        Type(page, "meltKg", "2800"); // and they stay
        page.WaitForAssertion(() => Assert.EndsWith("&kg=2800&wish=out%40materials.pig&wish=1250.5%40materials.pig.maxKg", The<QuietAddress>().Here, StringComparison.Ordinal), Patience);
        Assert.EndsWith(Chosen, Addresses.Uri, StringComparison.Ordinal); // no navigation, which would pull back whoever has left meanwhile
        Assert.Equal(Uri.EscapeDataString(The<QuietAddress>().Here), page.Find("[data-testid=add-material]").GetAttribute("href")!.Split("back=")[1]);
        Type(page, "materials.pig.maxKg", "");
        page.WaitForAssertion(() => Assert.Equal(["out@materials.pig"], Said), Patience);
    }

    [Fact]
    public async Task Answers_GivenToThePage_GoIntoTheAddressAndAreTakenFromIt()
    {
        var steel = (await The<YardPage>().Material(MaterialIds["steel"], Cancellation))!;
        await The<ChangePrice>().Run(Founder, new(Guid.NewGuid(), Now, steel.Id, steel.Version, -20), Cancellation);
        var page = OpenPlanned(Role.Metallurgist);
        Press(page, "Yes, it is right");
        page.WaitForAssertion(() => Assert.Equal(["-20@rightPrices.steel"], Said), Patience);
        Choose(page, "runsOut", "pig");
        page.WaitForAssertion(() => Assert.Equal(["-20@rightPrices.steel", "pig@runsOut"], Said), Patience);
        page.Find("[data-testid=why]").Click();
        page.WaitForAssertion(() => Assert.Equal(["no@why", "-20@rightPrices.steel", "pig@runsOut"], Said), Patience);

        page = Open(Chosen + "&wish=yes@why&wish=-20@rightPrices.steel&wish=pig@runsOut");
        WaitForPlan(page);
        Assert.Equal("pig", Field(page, "runsOut").QuerySelector("select")!.GetAttribute("value"));
        Assert.Empty(page.FindAll("[data-price-asked]"));
        WaitForPlan(page = Open(Chosen + "&wish=-21@rightPrices.steel"));
        Assert.NotNull(page.Find("[data-price-asked=steel]")); // another price is asked about anew
    }

    private IEnumerable<string> Said => (IReadOnlyList<string>)JSInterop.Invocations["say"].Last(said => said.Arguments[0] is "wish").Arguments[1]!;

    private static string? Value(IRenderedComponent<MeltShop.Web.Pages.Charge.ChargePlanning> page, string path) => Field(page, path).QuerySelector("input")!.GetAttribute("value") ?? "";
}
