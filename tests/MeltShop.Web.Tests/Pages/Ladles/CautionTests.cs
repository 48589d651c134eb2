using Bunit;
using MeltShop.Operations.Ladles;
using MeltShop.Records.Grades;
using MeltShop.Records.People;
using MeltShop.Web.Pages.JointPours;
using MeltShop.Web.Pages.Ladles;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Tests.Pages.Ladles;

/// <summary>
/// The usual cautions of a ladle, of a joint pour, of topping up and of what is left (common practice; the hoist: Ohio Administrative Code, rule 4123:1-7-05): there in every state, for every
/// role, whatever is ticked or pressed, with nothing in them that could put them away.
/// </summary>
public sealed class CautionTests : LadleTest
{
    private static readonly string[] Usual = ["Flare", "Damp", "Hoist", "Freeboard", "Fire", "PouredBack", "Carbide", "Decides"];

    [Fact]
    public async Task Cautions_FromTheCardToTheDecision_AreThereInEveryStateAndForEveryRole()
    {
        await BathSample();
        SignIn(Role.Melter);
        var preparation = Render<LadlePreparation>(parameters => parameters.Add(p => p.HeatId, HeatId));
        preparation.WaitForState(() => preparation.FindAll("[data-state=ready]").Count > 0, Patience);
        foreach (var check in PocketChecks.For(IronFamily.Ductile)) preparation.Find($"[data-check={check}]").Change(true);
        AllThere(preparation);

        var id = await Prepared();
        await EveryRole(id, "Prepared");
        await Tap(id, 790);
        await EveryRole(id, "Tapped");
        await EndReaction(id);
        await EveryRole(id, "Pouring");
        await LastMetal(id, 0.042);
        await EveryRole(id, "Held");
    }

    [Fact]
    public async Task TapForm_AnyTap_SaysNeverToAddAlloyToThePocket()
    {
        SignIn(Role.Melter);
        var id = await Prepared();
        var page = await Open(id, "Prepared");

        var caution = page.Find(".next .caution");
        Assert.Contains("Never add alloy", caution.TextContent, StringComparison.Ordinal);
        Assert.Empty(caution.QuerySelectorAll("input, button, summary, a"));
    }

    [Fact]
    public void JointPourAndToppingUp_WhateverIsTyped_KeepTheirsForEveryRole()
    {
        foreach (var role in Role.All)
        {
            SignIn(role);
            var joint = Render<JointPouring>();
            joint.Find("[data-field='ladles[0].kg'] input").Change("10000");
            AllThere(joint, "joint-cautions", "Flare", "Damp", "Decides");
            var bath = Render<ToppingUp>();
            bath.Find("[data-field=kg] input").Change("1000");
            AllThere(bath, "bath-cautions", "Flare", "Damp", "Overfill", "Decides");
        }
    }

    /// <summary>Wherever the rest of a ladle goes, its own caution stands in the form that records it, and those of the ladle stand besides.</summary>
    [Fact]
    public async Task Rest_WhereverItGoes_HasItsCautionInTheForm()
    {
        SignIn(Role.Melter);
        var id = await Prepared();
        await Tap(id, 790);
        await EndReaction(id);
        var other = await Prepared(1);
        await Tap(other, 500);
        await EndReaction(other);
        var page = await Open(id, "Pouring");

        foreach (var way in Enum.GetValues<RestWay>())
        {
            page.Find("[data-testid=rest-form] [data-field=way] select").Change(way.ToString());
            var caution = page.Find($"[data-testid=rest-form] .caution[data-caution={way}]");
            Assert.Empty(caution.QuerySelectorAll("input, button, summary, a, [hidden]"));
            Assert.Null(caution.Closest("details"));
            Assert.Contains(way == RestWay.PouredBack ? "flares" : "dry", caution.TextContent, StringComparison.OrdinalIgnoreCase);
            AllThere(page);
        }
    }

    private async Task EveryRole(long id, string state)
    {
        foreach (var role in Role.All)
        {
            SignIn(role);
            AllThere(await Open(id, state));
        }
    }

    private Task<IRenderedComponent<LadleDetail>> Open(long id, string state)
    {
        var page = Render<LadleDetail>(parameters => parameters.Add(p => p.Id, id));
        page.WaitForState(() => page.FindAll($"[data-ladle-state={state}]").Count > 0, Patience);
        return Task.FromResult(page);
    }

    private static void AllThere<TPage>(IRenderedComponent<TPage> page)
        where TPage : IComponent => AllThere(page, "ladle-cautions", Usual);

    private static void AllThere<TPage>(IRenderedComponent<TPage> page, string where, params string[] usual)
        where TPage : IComponent
    {
        var cautions = page.Find($"[data-testid={where}]");
        Assert.Equal(usual, cautions.QuerySelectorAll("[data-caution]").Select(caution => caution.GetAttribute("data-caution")));
        Assert.Empty(cautions.QuerySelectorAll("input, button, summary, a, [hidden]"));
        Assert.Null(cautions.Closest("details"));
    }
}
