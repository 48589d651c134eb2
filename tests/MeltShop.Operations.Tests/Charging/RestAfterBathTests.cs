using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Quantities;
using MeltShop.Operations.Charging;
using MeltShop.Records.Reading.Yard;
using MeltShop.Records.Yard;

namespace MeltShop.Operations.Tests.Charging;

/// <summary>
/// The rest of a charge small enough for a pencil, of which some went into a bath: 1000 kg of a (no C, 100/t) and b (5 % C, 200/t) with 3.1 % C, that is 31 kg. With the charge all carbon
/// of b arrives, late four fifths of it: 100 kg of b into a bath are 4 kg of carbon in 99 kg.
/// </summary>
public sealed class RestAfterBathTests
{
    private static readonly ChargeProblem Question = Asked(Material("b", 200, (Element.C, 5)));

    /// <summary>4 kg of carbon are in; 540 kg of b bring the other 27 kg, and 99 kg and 540 kg leave 361 kg for a.</summary>
    [Theory]
    [InlineData(0, "a b")]
    [InlineData(200, "a b")]
    public void Rest_SomeOfItWentIntoTheBath_HasOfThatWhatArrivesThere(double withTheCharge, string codes)
    {
        var rest = Rest(Question, withTheCharge, 100);

        Assert.Equal(codes, string.Join(' ', rest.Lines!.Select(line => line.Code).Order()));
        Assert.Equal((RestStanding.Kept, 640d, 361d), (rest.Standing, Kg(rest, "b"), Kg(rest, "a")));
        Assert.Equal(100, rest.Lines!.Sum(line => line.Percent), 9);
        Assert.Empty(rest.Charge!.Groups);
    }

    /// <summary>A greatest mass and a greatest share are of both together: 530 kg more are 30.5 kg of carbon, inside of the limit alone.</summary>
    [Theory]
    [InlineData(630d, 100)]
    [InlineData(null, 62.95)]
    public void Rest_OfAMaterialWithItsMost_CountsWhatWentIntoTheBath(double? mostKg, double mostPercent)
    {
        var rest = Rest(Asked(Question.Materials[1] with { MaxKg = mostKg, MaxPercent = mostPercent }), 200, 100);

        Assert.Equal(RestStanding.WithoutMargin, rest.Standing);
        Assert.InRange(Kg(rest, "b"), 619, 630.6);
    }

    [Fact]
    public void Rest_WithMoreThanTheMostOfBothTogether_MissesTheMostOfTheMaterial()
    {
        var rest = Rest(Asked(Question.Materials[1] with { MaxKg = 630 }), 600, 100);

        var miss = Assert.Single(rest.Misses);
        Assert.Equal((MissKind.MaterialKg, "b", true, 630d, 700d), (miss.Kind, miss.Name, miss.IsMax, miss.Asked, Math.Round(miss.Value, 6)));
        Assert.Equal("b", Assert.Single(rest.AsItIs!.Misses, m => m.Kind is MissKind.MaterialKg).Name);
    }

    /// <summary>700 kg of b were chosen: 100 kg are in the bath, 600 kg go with the charge. 34 kg of carbon in 999 kg.</summary>
    [Fact]
    public void Rest_OfAChargeMadeByHand_CountsWhatWentIntoTheBath()
    {
        var made = HandCharge.Of(Question, [new ChosenMass("b", 700), new ChosenMass("a", 300)]).AsPlan;
        var rest = Rest(Question, 100, 100, made);

        Assert.Equal((RestStanding.Kept, 700d, 300d), (rest.Standing, Kg(rest, "b"), Kg(rest, "a")));
        Assert.Equal(3.403, rest.Charge!.Limits[0].Value, 3);
    }

    /// <summary>It went into liquid iron, where its recovery is known; that of a cold charge nobody needs.</summary>
    [Fact]
    public void Rest_SomethingThatWasNotPlannedWentIntoTheBath_NeedsNoRecoveryOfTheCharge()
    {
        var alloy = Lying("x", new MaterialPercentView(Element.Mg, 5, null, null, 40));
        RestAnswer Rest(bool intoBath) => RestQuestion.Answer(
            Question, Masses("x", intoBath ? 0 : 10), plannedKg: 1000, [alloy], intoBathKg: Masses("x", intoBath ? 10 : 0), cancellation: TestContext.Current.CancellationToken);

        Assert.Equal("material.noMgRecovery", Assert.Single(Rest(intoBath: false).Unknown).Why);
        Assert.Equal((RestStanding.Kept, 10d), (Rest(intoBath: true).Standing, Kg(Rest(intoBath: true), "x")));
    }

    private static ChargeProblem Asked(ChargeMaterial b) => new()
    {
        MeltKg = 1000, Materials = [Material("a", 100), b], Limits = [new(LinearQuantity.Of(Element.C), 3, 4, 0.1)],
    };

    private static RestAnswer Rest(ChargeProblem asked, double withTheCharge, double intoBath, ChargePlan? byHand = null) => RestQuestion.Answer(
        asked, Masses("b", withTheCharge), plannedKg: 1000, [Lying("b", new MaterialPercentView(Element.C, 5, null, null, 80))], byHand, intoBathKg: Masses("b", intoBath),
        cancellation: TestContext.Current.CancellationToken);

    private static Dictionary<string, double> Masses(string code, double kg) => kg > 0 ? new() { [code] = kg } : [];

    private static double Kg(RestAnswer rest, string code) => Math.Round(rest.Lines!.Where(line => line.Code == code).Sum(line => line.Kg), 6);

    private static ChargeMaterial Material(string code, double price, params (Element, double)[] percents) =>
        new() { Code = code, PricePerTonne = price, Composition = new() { Analysis = Analysis.Of(percents) } };

    private static MaterialView Lying(string code, params MaterialPercentView[] percents) => new(
        1, Guid.Empty, code, code, MaterialKind.PigIron, MaterialUses.Charge | MaterialUses.BathAddition, 100, null, 100, null, null, null, [], false, true,
        new MaterialAnalysisView(1, "Test figures", "memory", DateTimeOffset.UnixEpoch, null, percents));
}
