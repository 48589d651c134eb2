using Bunit;
using MeltShop.Charging;
using MeltShop.Charging.Plans;
using MeltShop.Operations.Charging;
using MeltShop.Operations.Grades;
using MeltShop.Records.Grades;
using MeltShop.Records.People;
using MeltShop.Records.Reading.Charge;
using MeltShop.Web.Pages.Charge;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Localization;

namespace MeltShop.Web.Tests.Pages.Charge;

/// <summary>A limit is told as it was asked for, and its margin apart from it, also where rows of a curve hold both.</summary>
public sealed class MarginTests : ChargeTest
{
    // At least 3.5 % of carbon with its margin of 0.02, and 0.75 − 0.02 of saturation at most: 3.52 / (4.26 − Si/3) is 0.73 only with a negative silicon.
    [Fact]
    public async Task Clash_OfACurvedQuantity_SaysTheLimitAndTheMargin()
    {
        await AddGrade(null, 0.75);
        var page = Open(Address, Role.Metallurgist);
        page.WaitForState(() => page.FindAll("[data-testid=infeasible]").Count > 0, Patience);

        Assert.Matches("^saturation Sc: most 0.75 and a margin of 0.02 to it are asked; 0.8[0-9]+ is the nearest that can be reached", Words(page.Find("[data-clash=Sc]")));
        Assert.StartsWith("C: least 3.50\u00a0% and a margin of 0.02\u00a0% to it are asked; ", Words(page.Find("[data-clash=C]")), StringComparison.Ordinal);
        Assert.Equal("most 0.75 · margin 0.02", page.Find("[data-limit=Sc] .limit-words > :nth-child(2)").TextContent);
    }

    [Fact]
    public async Task Bar_OfACurvedQuantity_IsDrawnToTheLimitAndTheMarginIsSaid()
    {
        await AddGrade(0.90, null);
        var page = Open(Address, Role.Metallurgist);
        WaitForPlan(page);

        Assert.StartsWith("least 0.90", page.Find("[data-limit=Sc] .limit-figures").TextContent.Trim().ToLowerInvariant(), StringComparison.Ordinal);
        Assert.Contains("The plan sits on the least (margin 0.02).", page.Find("[data-limit=Sc]").TextContent, StringComparison.Ordinal);
        Change(page, "saturation Sc");
        Assert.Contains("Margin kept: 0.02", page.Find("[data-testid=limit-choices]").TextContent, StringComparison.Ordinal);

        var plan = await The<PlanCharge>().Run(Founder, new(Guid.NewGuid(), Now, new ChargeChoice(FurnaceId, OtherId, 3000)), Cancellation);
        var kept = Render<KeptPlan>(parameters => parameters.Add(p => p.PlanId, plan.Value.PlanId));
        kept.WaitForState(() => kept.FindAll("[data-quantity=Sc]").Count > 0, Patience);
        Assert.StartsWith("least 0.90", kept.Find("[data-quantity=Sc] .limit-figures").TextContent.Trim().ToLowerInvariant(), StringComparison.Ordinal);
    }

    // ln 87 = 4.465908 is asked of a ferrite of at least 85 % with a margin of 2; ln 86 = 4.454347, ln 84 = 4.430817.
    [Theory]
    [InlineData(MissKind.Quantity, "Mn", true, 0.49, 0.495, 0.01, 0, "Mn will be 0.495\u00a0%: under the most of 0.500\u00a0%, but not by the 0.01\u00a0% that margin and confidence ask for.")]
    [InlineData(MissKind.Quantity, "Mn", true, 0.49, 0.53, 0.01, 0, "Mn will be 0.53\u00a0%; the most is 0.50\u00a0%, 0.03\u00a0% too much.")]
    [InlineData(MissKind.Quantity, "Si", false, 1.32, 1.29, 0.02, 0, "Si will be 1.29\u00a0%; the least is 1.30\u00a0%, 0.01\u00a0% too little.")]
    [InlineData(MissKind.Quantity, "ferritePercent", false, 4.465908, 4.454347, 0, 2, "ferrite will be 86\u00a0%: above the least of 85\u00a0%, but not by the 2\u00a0% that margin and confidence ask for.")]
    [InlineData(MissKind.Quantity, "ferritePercent", false, 4.465908, 4.430817, 0, 2, "ferrite will be 84\u00a0%; the least is 85\u00a0%, 1\u00a0% too little.")]
    [InlineData(MissKind.GroupPercent, "Returns", true, 30, 35, 0, 0, "Returns together: 35.0\u00a0% of the charge; the greatest share is 30.0\u00a0%.")]
    [InlineData(MissKind.GroupKg, "galvanised", true, 100, 120, 0, 0, "Galvanised together: 120\u00a0kg; the most is 100\u00a0kg.")]
    [InlineData(MissKind.Volume, "bucket", true, 1.5, 1.75, 0, 0, "Bucket: the cold charge takes 1.75\u00a0m³; the room is 1.50\u00a0m³.")]
    [InlineData(MissKind.MaterialKg, "steel", true, 100, 120, 0, 0, "Test steel: 120\u00a0kg; the most is 100\u00a0kg.")]
    public void Miss_OfAnyKind_IsToldByItsNameAndByTheLimitThatPeopleKnow(MissKind kind, string name, bool isMax, double asked, double value, double inward, double held, string words)
    {
        IStringLocalizer<T> Of<T>() => Services.GetRequiredService<IStringLocalizer<T>>();
        var text = new MissText(Of<Web.Texts.Charge>(), Of<Web.Texts.Limits>(), Of<Web.Texts.Yard>());

        Assert.Equal(words, text.Of(new(kind, name, isMax, asked, value) { Inward = inward, HeldMargin = held }, code => "Test " + code));
    }

    private const string Address = "/charge?furnace=F1&grade=EN-GJL-250&kg=3000";

    private long OtherId { get; set; }

    private async Task AddGrade(double? least, double? most) => OtherId = (await The<AddGrade>().Run(Founder, new(
        Guid.NewGuid(), Now, "EN-GJL-250", IronFamily.Grey, "Test figures",
        [new(WindowStage.Furnace, "C", 3.5, 3.65, 3.8, 0.02), new(WindowStage.Furnace, "Sc", least, null, most, 0.02)], new(null, null, null, null, null, null, null)), Cancellation)).Value;

    private static string Words(AngleSharp.Dom.IElement element) => element.TextContent.Trim();
}
