using Bunit;
using MeltShop.Metallurgy.Pouring;
using MeltShop.Operations.Grades;
using MeltShop.Operations.Orders;
using MeltShop.Operations.Sites;
using MeltShop.Records.Grades;
using MeltShop.Records.Orders;
using MeltShop.Records.People;
using MeltShop.Records.Reading.Orders;
using MeltShop.Web.Components.Units;
using MeltShop.Web.Pages.Orders;
using MeltShop.Web.Tests.Texts;
using MeltShop.Web.Texts;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Tests.Pages.Orders;

/// <summary>Orders are taken, changed, counted and closed at the page; the metal and the heats follow.</summary>
public sealed class OrderPagesTests : ShopTest
{
    private long gradeId;

    protected override async Task Prepare()
    {
        await The<SetUpSite>().Run(Founder, new(Guid.NewGuid(), Now, "TB", "Talbrück", "Europe/Berlin", "EUR"), Cancellation);
        await The<AddFurnace>().Run(Founder, new(Guid.NewGuid(), Now, "F1", "Furnace 1", 3000, 1800), Cancellation);
        await The<AddFurnace>().Run(Founder, new(Guid.NewGuid(), Now, "F2", "Furnace 2", 1000, 800), Cancellation);
        gradeId = (await The<AddGrade>().Run(Founder, new(Guid.NewGuid(), Now, "EN-GJL-250", IronFamily.Grey, "invented for a test", [new(WindowStage.Furnace, "C", 3.2, 3.3, 3.4)], null), Cancellation)).Value;
    }

    [Fact]
    public async Task Order_TakenOnAnEmptyPage_IsListedWithItsMetalAndItsHeats()
    {
        var page = OpenList(Role.Supervisor, "empty");
        Assert.Contains("No orders yet", page.Markup, StringComparison.Ordinal);
        page.Find("[data-testid=take-order]").Click();
        Type(page, ("number", "4711"), ("casting", "Bracket"), ("wallMm", "22"), ("castingKg", "85"), ("mouldYieldPercent", "68"), ("pieces", "50"), ("dueOn", "2199-03-09"));
        page.Find("[data-field=gradeId] select").Change(gradeId.ToString(System.Globalization.CultureInfo.InvariantCulture));
        page.Find("[data-testid=order-form]").Submit();

        page.WaitForState(() => page.FindAll("tr[data-order='4711']").Count > 0, Patience); // 50 · 85 / 0.68 = 6250 kg, in 3 heats of 2083.3 kg
        Assert.Contains("50 of 50", page.Find("tr[data-order='4711']").TextContent, StringComparison.Ordinal);
        Assert.Contains("6250", page.Find("[data-testid=needed] tr[data-grade='EN-GJL-250']").TextContent, StringComparison.Ordinal);
        var heats = page.Find("[data-testid=heats] tr[data-grade='EN-GJL-250']");
        Assert.Contains("3 heats of 2084\u00a0kg each", heats.TextContent, StringComparison.Ordinal);
        Assert.Equal("/charge?furnace=F1&grade=EN-GJL-250&kg=2084", heats.QuerySelector("a")!.GetAttribute("href"));
        Assert.Empty(page.FindAll("[data-testid=late], [data-testid=order-form]"));
        Assert.Equal(22, (await The<OrdersPage>().Load(new(), Cancellation)).Orders.Single().WallMm);
    }

    [Fact]
    public async Task Order_WithANumberThatIsTaken_IsRefusedAtItsFieldAndNothingTypedIsLost()
    {
        await Take("4711");
        var page = OpenList(Role.Supervisor);
        page.Find("[data-testid=take-order]").Click();
        Type(page, ("number", "4711"), ("casting", "Lid"), ("wallMm", "12"), ("castingKg", "40"), ("mouldYieldPercent", "80"), ("pieces", "1.5"), ("dueOn", ""));
        page.Find("[data-field=gradeId] select").Change(gradeId.ToString(System.Globalization.CultureInfo.InvariantCulture));
        page.Find("[data-testid=order-form]").Submit();
        page.WaitForAssertion(() => Assert.Equal("text.missing", Code(page, "dueOn")), Patience);

        Type(page, ("dueOn", "2026-04-01"));
        page.Find("[data-testid=order-form]").Submit();
        page.WaitForAssertion(() => Assert.Equal("number.notWhole", Code(page, "pieces")), Patience);

        Type(page, ("pieces", "2"));
        page.Find("[data-testid=order-form]").Submit();
        page.WaitForAssertion(() => Assert.Equal("code.taken", Code(page, "number")), Patience);
        Assert.Equal("Lid", page.Find("[data-field=casting] input").GetAttribute("value"));
    }

    // 4 · 125 = 500 kg.
    [Theory]
    [InlineData("/orders?furnace=F2", "1 heat of 500\u00a0kg", "furnace=F2&grade=EN-GJL-250&kg=500")]
    [InlineData("/orders?furnace=F9", "1 heat of 500\u00a0kg", "furnace=F1&grade=EN-GJL-250&kg=500")]
    public async Task Heats_OfTheFurnaceInTheAddress_AreProposed(string address, string words, string plan)
    {
        await Take("4711", pieces: 4);
        var heats = OpenList(Role.Melter, address: address).Find("[data-testid=heats] tr[data-grade]");

        Assert.Contains(words, heats.TextContent, StringComparison.Ordinal);
        Assert.EndsWith(plan, heats.QuerySelector("a")!.GetAttribute("href"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Order_WhoseDayIsOver_IsLateUntilAllIsPoured()
    {
        var id = await Take("4711", dueOn: new(2020, 3, 9));
        Assert.Contains("! late", OpenList(Role.Melter).Find("tr[data-order='4711'] [data-testid=late]").TextContent, StringComparison.Ordinal);

        var version = (await The<OrdersPage>().Order(id, Cancellation))!.Order.Version;
        await The<CountPieces>().Run(Founder, new(Guid.NewGuid(), Now, id, version, 13), Cancellation);

        var page = OpenList(Role.Melter);
        Assert.Empty(page.FindAll("[data-testid=late], [data-testid=needed]"));
        Assert.Contains("0 of 12", page.Find("tr[data-order='4711']").TextContent, StringComparison.Ordinal);
        Assert.NotNull(page.Find("[data-testid=all-poured]"));
    }

    [Fact]
    public async Task Filter_Chosen_GoesIntoTheAddressAndShowsWhatFits()
    {
        await Take("4711");
        await Take("4712", dueOn: new(2026, 5, 1));
        var page = OpenList(Role.Supervisor, address: "/orders?until=2026-04-30");
        Assert.Equal(["4711"], page.FindAll("tr[data-order]").Select(row => row.GetAttribute("data-order")));

        page.Find("[data-field=show] select").Change("closed");
        Assert.Equal("?until=2026-04-30&show=closed", new Uri(The<NavigationManager>().Uri).Query);
        Assert.NotNull(OpenList(Role.Supervisor, address: "/orders?show=closed").Find("[data-testid=nothing-found]"));
    }

    [Fact]
    public async Task Order_CountedChangedAndClosed_IsOpenedAgain()
    {
        var id = await Take("4711");
        var page = OpenOrder(id, Role.Metallurgist);
        page.Find("[data-testid=count]").Click();
        Type(page, ("piecesPoured", "5"));
        page.Find("[data-testid=count-form]").Submit();
        page.WaitForAssertion(() => Assert.Equal("875\u00a0kg", page.Find("[data-testid=metal-left]").TextContent), Patience); // 7 · 125

        page.Find("[data-testid=set-order]").Click();
        Assert.Equal("2026-03-09", page.Find("[data-field=dueOn] input").GetAttribute("value"));
        Type(page, ("pieces", "6"));
        page.Find("[data-testid=order-form]").Submit();
        page.WaitForAssertion(() => Assert.Equal("125\u00a0kg", page.Find("[data-testid=metal-left]").TextContent), Patience);

        page.Find("[data-testid=close-withdrawn]").Click();
        page.WaitForState(() => page.FindAll("[data-testid=open-again]").Count > 0, Patience);
        Assert.Empty(page.FindAll("[data-testid=count], [data-testid=set-order]"));
        Assert.Equal(OrderState.Withdrawn, (await The<OrdersPage>().Order(id, Cancellation))!.Order.State);
        page.Find("[data-testid=open-again]").Click();
        page.WaitForState(() => page.FindAll("[data-testid=close-done]").Count > 0, Patience);
    }

    [Fact]
    public async Task Order_ClosedByTwoPressesOnOneDrawing_IsClosedOnceAndNothingIsRefused()
    {
        var id = await Take("4711");
        SignIn(Role.Supervisor);
        var order = (await The<OrdersPage>().Order(id, Cancellation))!.Order;
        var card = Render<OrderEnd>(p => p.Add(x => x.Order, order)); // and is not drawn anew
        card.Find("[data-testid=close-done]").Click();
        card.Find("[data-testid=close-done]").Click();

        Assert.Empty(card.FindAll("[data-testid=findings]"));
        Assert.Equal(OrderState.Done, (await The<OrdersPage>().Order(id, Cancellation))!.Order.State);
    }

    [Fact]
    public async Task Order_ChangedBySomebodyElseMeanwhile_IsToldAndTheSecondSaveCounts()
    {
        var id = await Take("4711");
        var page = OpenOrder(id, Role.Supervisor);
        page.Find("[data-testid=set-order]").Click();
        Type(page, ("pieces", "20"));
        var version = (await The<OrdersPage>().Order(id, Cancellation))!.Order.Version;
        await The<CountPieces>().Run(Founder, new(Guid.NewGuid(), Now, id, version, 3), Cancellation);
        page.Find("[data-testid=order-form]").Submit();
        page.WaitForState(() => page.FindAll("[data-code='version.stale']").Count > 0, Patience);
        Assert.Equal("20", page.Find("[data-field=pieces] input").GetAttribute("value"));

        page.Find("[data-testid=order-form]").Submit();
        page.WaitForState(() => page.FindAll("[data-testid=order-form]").Count == 0, Patience);
        var order = (await The<OrdersPage>().Order(id, Cancellation))!.Order;
        Assert.Equal((20, 3), (order.Pieces, order.PiecesPoured));
    }

    [Fact]
    public async Task Orders_ForAMelter_AreReadOnlyButForTheCount()
    {
        var id = await Take("4711");
        Assert.Contains("supervisor", OpenList(Role.Melter).Find("[data-testid=read-only]").TextContent, StringComparison.Ordinal);
        var page = OpenOrder(id, Role.Melter);

        Assert.Single(page.FindAll("[data-testid=count]"));
        Assert.Empty(page.FindAll("[data-testid=set-order], [data-testid=close-done]"));
        Assert.NotNull(page.Find("[data-testid=read-only]"));
        Assert.Empty(OpenOrder(id, Role.Inspector).FindAll("[data-testid=count]"));
    }

    [Fact]
    public void Order_ThatIsNone_IsMissing()
    {
        SignIn(Role.Supervisor);
        var page = Render<OrderDetail>(p => p.Add(x => x.Id, 4711));

        page.WaitForState(() => page.FindAll("[data-state=missing]").Count > 0, Patience);
    }

    [Fact]
    public async Task Orders_InAShopOfPounds_AreShownInPounds()
    {
        await Take("4711");
        Measure(new(Web.Components.Units.Measure.Pound, Web.Components.Units.Measure.Celsius));

        Assert.Contains("3307", OpenList(Role.Melter).Find("tr[data-order='4711']").TextContent, StringComparison.Ordinal); // 1500 kg
    }

    [Fact]
    public async Task Orders_InThePseudoLanguage_HaveNoWordOutsideTheirTexts()
    {
        var id = await Take("4711");
        Speak(PseudoLanguage.Culture);
        var list = OpenList(Role.Supervisor);
        list.Find("[data-testid=take-order]").Click();
        var order = OpenOrder(id, Role.Supervisor);
        order.Find("[data-testid=count]").Click();

        string[] ours =
        [
            OrderMetal.KgFormula.Expression, PouredMass.Formula.Expression, PouredMass.Formula.Range, OrderMetal.KgFormula.Range, .. PouredMass.Formula.Sources.Select(source => $"{source}"),
            "4711", "Bracket", "EN-GJL-250", "Furnace 1", "Furnace 2", "kg", "mm", "%", list.Find("tr[data-order] td:last-child").TextContent.Split('!')[0].Trim(),
        ];
        Assert.Empty(Marks.WordsOutside(list.Nodes, ours));
        Assert.Empty(Marks.WordsOutside(order.Nodes, ours));
    }

    private async Task<long> Take(string number, int pieces = 12, DateOnly? dueOn = null)
    {
        var taken = await The<TakeOrder>().Run(Founder, new(Guid.NewGuid(), Now, new(number, "Bracket", gradeId, 22, 85, 68, pieces, dueOn ?? new(2026, 3, 9))), Cancellation);
        return taken.Value;
    }

    private IRenderedComponent<OrderList> OpenList(string role, string state = "ready", string address = "/orders")
    {
        SignIn(role);
        The<NavigationManager>().NavigateTo(address);
        var page = Render<OrderList>();
        page.WaitForState(() => page.FindAll($"[data-state={state}]").Count > 0, Patience);
        return page;
    }

    private IRenderedComponent<OrderDetail> OpenOrder(long id, string role)
    {
        SignIn(role);
        var page = Render<OrderDetail>(p => p.Add(x => x.Id, id));
        page.WaitForState(() => page.FindAll("[data-state=ready]").Count > 0, Patience);
        return page;
    }

    private static string? Code<TPage>(IRenderedComponent<TPage> page, string path)
        where TPage : IComponent => page.Find($"[data-field={path}] .field-error").GetAttribute("data-code");

    private static void Type<TPage>(IRenderedComponent<TPage> page, params (string Path, string Text)[] fields)
        where TPage : IComponent
    {
        foreach (var (path, text) in fields) page.Find($"form [data-field={path}] input").Change(text);
    }
}
