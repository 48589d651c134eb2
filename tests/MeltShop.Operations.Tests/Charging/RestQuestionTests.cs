using MeltShop.Charging;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Quantities;
using MeltShop.Operations.Charging;
using MeltShop.Records.Reading.Yard;
using MeltShop.Records.Yard;

namespace MeltShop.Operations.Tests.Charging;

/// <summary>The rest of a charge small enough for a pencil: 1000 kg of a (no C, 100/t), b (5 % C, 200/t) and cu (copper).</summary>
public sealed class RestQuestionTests
{
    private static readonly ChargeProblem Asked = new()
    {
        MeltKg = 1000,
        Materials = [Material("a", 100), Material("b", 200, (Element.C, 5)), Material("cu", 9000, (Element.Cu, 100))],
        Limits = [new(LinearQuantity.Of(Element.C), 3, 4, 0.1), new(LinearQuantity.Of(Element.Cu), null, 0.5)],
    };

    [Fact]
    public void Plan_NothingWeighed_IsThePencilsOwn()
    {
        // 3.1 % C with the margin: 31 kg from b at 5 %, so 620 kg of b and 380 kg of a.
        var plan = ChargeOptimiser.Plan(Asked, TestContext.Current.CancellationToken);

        Assert.Equal((620, 380), (Math.Round(Kg(plan, "b"), 6), Math.Round(Kg(plan, "a"), 6)));
    }

    [Fact]
    public void Rest_TooMuchOfOne_PutsLessOfTheOtherAndIsKept()
    {
        // 700 kg of b are in: 300 kg of a are left, 3.5 % C.
        var rest = Rest(("b", 700));

        Assert.Equal(RestStanding.Kept, rest.Standing);
        Assert.Equal((700, 300), (Math.Round(Kg(rest, "b"), 6), Math.Round(Kg(rest, "a"), 6)));
    }

    [Fact]
    public void Rest_TooLittleOfOne_MayStillBeMadeUp()
    {
        var rest = Rest(("b", 500), ("a", 380));

        Assert.Equal(RestStanding.Kept, rest.Standing);
        Assert.Equal(620, Kg(rest, "b"), 6);
    }

    [Fact]
    public void Rest_MoreThanLeavesTheMargin_KeepsTheLimitAlone()
    {
        // 780 kg of b in 1000 kg are 3.9 % C, on the margin; 795 kg are 3.975 %, inside the limit itself.
        var rest = Rest(("b", 795), ("a", 205));

        Assert.Equal(RestStanding.WithoutMargin, rest.Standing);
        Assert.Empty(rest.Misses);
    }

    [Fact]
    public void Rest_WithoutTheMargin_IsSaidToBeProvenOnlyWhereItIs()
    {
        // A margin that is no number is refused long before it comes here; no solver can decide with it.
        var undecided = RestQuestion.Answer(
            Asked with { Limits = [Asked.Limits[0] with { Margin = double.NaN }, Asked.Limits[1]] }, Weighed(("b", 795)), plannedKg: 1000, [], cancellation: TestContext.Current.CancellationToken);

        Assert.Equal((RestStanding.WithoutMargin, SearchEnd.Undecided), (undecided.Standing, undecided.End));
        Assert.Equal((RestStanding.WithoutMargin, SearchEnd.Proven), (Rest(("b", 795), ("a", 205)).Standing, Rest(("b", 795), ("a", 205)).End));
    }

    [Fact]
    public void Rest_OutOfReach_SaysWhatIsMissedAndByHowMuch()
    {
        // 10 kg of copper in 1010 kg, the most that counts as the melt that was wanted, are 0.990 %; 0.5 % was asked.
        var rest = Rest(("cu", 10));

        Assert.Equal(RestStanding.Missed, rest.Standing);
        var miss = Assert.Single(rest.Misses);
        Assert.Equal((MissKind.Quantity, "Cu", true, 0.5), (miss.Kind, miss.Name, miss.IsMax, miss.Asked));
        Assert.Equal(100 * 10.0 / 1010, miss.Value, 5);
        Assert.InRange(Value(rest, "C"), 3 - 1e-6, 4 + 1e-6);
    }

    [Fact]
    public void Rest_FarTooMuchLiquid_StandsAsItIs()
    {
        var rest = Rest(("a", 380), ("b", 800));

        Assert.Equal(RestStanding.Missed, rest.Standing);
        Assert.Equal(1180, rest.LiquidKg!.Value, 3);
        var miss = Assert.Single(rest.Misses);
        Assert.Equal(MissKind.LiquidKg, miss.Kind);
        Assert.Equal(1180 - 1010, miss.By, 3);
    }

    [Fact]
    public void Rest_AnyOrderAndAnyNumberOfWeighings_IsTheSame()
    {
        var once = Rest(("b", 700), ("a", 100));
        var other = Rest(("a", 100), ("b", 700));

        Assert.Equal(once.Lines!.Select(line => line.Kg), other.Lines!.Select(line => line.Kg));
    }

    [Fact]
    public void Rest_OnePercentOver_IsStillWhatWasWanted() => Assert.Equal(RestStanding.Kept, Rest(("b", 627), ("a", 382)).Standing);

    [Theory]
    [InlineData(1000, RestStanding.Missed, 9)]
    [InlineData(1005, RestStanding.Missed, 4)]
    [InlineData(1009, RestStanding.Kept, 0)]
    public void Rest_OnePercentOver_IsTooMuchForAFurnaceThatIsFull(double capacityKg, RestStanding standing, double overKg)
    {
        var rest = RestQuestion.Answer(Asked, Weighed(("b", 627), ("a", 382)), plannedKg: 1000, [], capacityKg: capacityKg, cancellation: TestContext.Current.CancellationToken);

        Assert.Equal(standing, rest.Standing);
        Assert.Equal(overKg, rest.Misses.Where(miss => miss.Kind is MissKind.LiquidKg).Sum(miss => miss.By), 6);
    }

    /// <summary>900 kg of b are 4.5 % C: missed. Nickel would dilute it without the sulphur of a, and nothing here says what it does to the iron.</summary>
    [Fact]
    public void Rest_TargetIsMissed_IsNotMendedWithAMetalThatNoLimitSpeaksOf()
    {
        var asked = Asked with
        {
            Materials = [Material("a", 100, (Element.S, 0.5)), Material("b", 200, (Element.C, 5)), Material("ni", 18000, (Element.Ni, 99))],
            Limits = [Asked.Limits[0], new(LinearQuantity.Of(Element.S), null, 0.02)],
        };
        var rest = RestQuestion.Answer(asked, Weighed(("b", 900)), plannedKg: 1000, [], cancellation: TestContext.Current.CancellationToken);
        var limited = RestQuestion.Answer(
            asked with { Limits = [.. asked.Limits, new(LinearQuantity.Of(Element.Ni), null, 20)] }, Weighed(("b", 900)), plannedKg: 1000, [], cancellation: TestContext.Current.CancellationToken);

        var wanted = RestQuestion.Answer(
            asked with { Limits = [.. asked.Limits, new(LinearQuantity.Of(Element.Ni), 1, null)] }, Weighed(("b", 900)), plannedKg: 1000, [], cancellation: TestContext.Current.CancellationToken);

        Assert.Equal((RestStanding.Missed, 0), (rest.Standing, Kg(rest, "ni")));
        Assert.InRange(Kg(wanted, "ni"), 9, 1000); // at least 1 % of it is asked for
        Assert.True(Kg(limited, "ni") > 50); // beside what a may bring of sulphur
    }

    [Fact]
    public void Rest_AnyMetal_SaysHowFarItCanStillBeMoved()
    {
        // 500 kg of b are in: at least 25 kg of carbon in at most 1010 kg, at most 50.5 kg (all of the rest b).
        var carbon = Rest(("b", 500)).StillPossible.Single(range => range.Quantity == "C");

        Assert.Equal(100 * 25.0 / 1010, carbon.Least!.Value, 5);
        Assert.Equal(5, carbon.Most!.Value, 5);
    }

    [Fact]
    public void Rest_SomethingElseIsInThatWasNotPlanned_CountsByItsAnalysis()
    {
        var rest = RestQuestion.Answer(Asked, Weighed(("x", 100)), plannedKg: 1000, [Lying("x", new MaterialPercentView(Element.C, 5, null, null))], cancellation: TestContext.Current.CancellationToken);

        Assert.Equal(RestStanding.Kept, rest.Standing);
        Assert.Equal((100, 520), (Kg(rest, "x"), Math.Round(Kg(rest, "b"), 6)));
    }

    [Fact]
    public void Rest_SomethingElseIsInAndTheTargetIsMissed_TellsOnlyWhatIsMissed()
    {
        // Nobody asked for x, so that no greatest mass of it was missed.
        var rest = RestQuestion.Answer(
            Asked, Weighed(("x", 100), ("cu", 10)), plannedKg: 1000, [Lying("x", new MaterialPercentView(Element.C, 5, null, null))], cancellation: TestContext.Current.CancellationToken);

        Assert.Equal(RestStanding.Missed, rest.Standing);
        Assert.Equal("Cu", Assert.Single(rest.Misses).Name);
        Assert.Equal(100, Kg(rest, "x"));
    }

    [Theory]
    [InlineData("material.noAnalysis")]
    [InlineData("material.noYield")]
    [InlineData("material.noMgRecovery")]
    [InlineData("material.gone")]
    public void Rest_SomethingIsInThatCannotBeReckoned_IsNotPlannedAndSaysWhat(string why)
    {
        var iron = new MaterialPercentView(Element.C, 3.6, null, null);
        IReadOnlyList<MaterialView> yard = why switch
        {
            "material.noAnalysis" => [Lying("x")],
            "material.noYield" => [Lying("x", iron) with { MetallicYieldPercent = null }],
            // Returns of treated iron: without a recovery all of the magnesium would count as staying.
            "material.noMgRecovery" => [Lying("x", iron, new MaterialPercentView(Element.Mg, 0.04, null, null))],
            _ => [],
        };
        var rest = RestQuestion.Answer(Asked, Weighed(("x", 100)), plannedKg: 1000, yard, cancellation: TestContext.Current.CancellationToken);

        Assert.Equal(RestStanding.Unknown, rest.Standing);
        Assert.Equal(("x", why), (Assert.Single(rest.Unknown).Code, rest.Unknown[0].Why));
        Assert.Null(rest.Lines);
    }

    [Fact]
    public void Rest_OnAnotherHeel_FillsUpFromThatOne()
    {
        // 100 kg with 4 % C are in the furnace: 31 kg of carbon less 4 kg, from b at 5 %.
        var rest = RestQuestion.Answer(
            Asked, Weighed(), plannedKg: 1000, [], heel: Metal.Of(100, Analysis.Of([KeyValuePair.Create(Element.C, 4.0)])), cancellation: TestContext.Current.CancellationToken);

        Assert.Equal(RestStanding.Kept, rest.Standing);
        Assert.Equal((540, 360), (Math.Round(Kg(rest, "b"), 6), Math.Round(Kg(rest, "a"), 6)));
    }

    [Fact]
    public void Rest_OfAChargeMadeByHand_StandsAsItWasMadeWhileItHolds()
    {
        // 700 kg of b were chosen although 620 kg are the cheapest; 3.5 % C.
        var rest = ByHand([("b", 700), ("a", 300)], ("b", 100));

        Assert.Equal((RestStanding.Kept, 700), (rest.Standing, Math.Round(Kg(rest, "b"), 6)));
    }

    [Fact]
    public void Rest_OfAChargeMadeByHandThatMissesSomething_StandsAndSaysWhat()
    {
        // 900 kg of b: 4.5 % C, which somebody took upon themselves.
        var rest = ByHand([("b", 900), ("a", 100)], ("b", 100));

        Assert.Equal(RestStanding.AsMade, rest.Standing);
        Assert.Equal("C", Assert.Single(rest.Misses).Name);
    }

    [Fact]
    public void Rest_OfAChargeMadeByHandThatMissesSomethingNew_IsPlannedAnew()
    {
        var rest = ByHand([("b", 700), ("a", 300)], ("b", 850));

        Assert.NotEqual(RestStanding.AsMade, rest.Standing);
        Assert.True(Kg(rest, "a") < 300);
    }

    [Fact]
    public void AsItIs_AlmostAllOfEach_KeepsTheLimitsAndSaysWhatIsMissing()
    {
        // 31.7 of 992 kg are 3.196 % C.
        var rest = Rest(("b", 634), ("a", 358)).AsItIs!;

        Assert.Equal((RestStanding.Kept, 8d), (rest.Standing, Math.Round(rest.ShortKg, 6)));
        Assert.Equal(3.196, Value(rest, "C"), 3);
    }

    [Fact]
    public void AsItIs_MarginEatenUp_IsInsideTheLimitsAlone()
    {
        // 614 kg of b in 994 kg are 3.089 % C: on the wrong side of the margin, 3.1, that the rest would still keep.
        var rest = Rest(("b", 614), ("a", 380));

        Assert.Equal((RestStanding.Kept, RestStanding.WithoutMargin), (rest.Standing, rest.AsItIs!.Standing));
        Assert.Empty(rest.AsItIs.Misses);
    }

    [Fact]
    public void AsItIs_TheLastAlloyShortWithoutAMargin_IsMissedThoughTheRestCouldKeepIt()
    {
        // 595 kg of b in 995 kg: 2.990 % C where at least 3 was asked. Four more of b would do.
        var rest = Rest(("b", 595), ("a", 400));

        Assert.Equal(RestStanding.WithoutMargin, rest.Standing);
        var miss = Assert.Single(rest.AsItIs!.Misses);
        Assert.Equal((RestStanding.Missed, "C", false, 3d), (rest.AsItIs.Standing, miss.Name, miss.IsMax, miss.Asked));
        Assert.Equal(2.990, miss.Value, 3);
    }

    [Fact]
    public void AsItIs_FarTooLittle_MissesTheMass()
    {
        var rest = Rest(("b", 500), ("a", 300)).AsItIs!;

        Assert.Equal((RestStanding.Missed, MissKind.LiquidKg), (rest.Standing, Assert.Single(rest.Misses).Kind));
    }

    [Fact]
    public void AsItIs_OfAChargeMadeByHand_MissesWhatItWasMadeToMiss() =>
        Assert.Equal(RestStanding.AsMade, ByHand([("b", 900), ("a", 100)], ("b", 900), ("a", 100)).AsItIs!.Standing);

    private static RestAnswer ByHand((string Code, double Kg)[] made, params (string Code, double Kg)[] weighed) => RestQuestion.Answer(
        Asked, Weighed(weighed), plannedKg: 1000, [], HandCharge.Of(Asked, made.Select(m => new ChosenMass(m.Code, m.Kg))).AsPlan, cancellation: TestContext.Current.CancellationToken);

    private static RestAnswer Rest(params (string Code, double Kg)[] weighed) =>
        RestQuestion.Answer(Asked, Weighed(weighed), plannedKg: 1000, [], cancellation: TestContext.Current.CancellationToken);

    private static Dictionary<string, double> Weighed(params (string Code, double Kg)[] weighed) => weighed.ToDictionary(w => w.Code, w => w.Kg);

    private static double Kg(RestAnswer rest, string code) => rest.Lines!.FirstOrDefault(line => line.Code == code)?.Kg ?? 0;

    private static double Kg(ChargePlan plan, string code) => plan.Lines.FirstOrDefault(line => line.Code == code)?.Kg ?? 0;

    private static double Value(RestAnswer rest, string quantity) => rest.Charge!.Limits.Single(limit => limit.Quantity == quantity).Value;

    private static MaterialView Lying(string code, params MaterialPercentView[] percents) => new(
        1, Guid.Empty, code, code, MaterialKind.SteelScrap, MaterialUses.Charge, 100, null, 100, null, null, null, [], false, true,
        percents.Length == 0 ? null : new MaterialAnalysisView(1, "Test figures", "memory", DateTimeOffset.UnixEpoch, null, percents));

    private static ChargeMaterial Material(string code, double price, params (Element, double)[] percents) =>
        new() { Code = code, PricePerTonne = price, Composition = new MaterialComposition { Analysis = Analysis.Of(percents) } };
}
