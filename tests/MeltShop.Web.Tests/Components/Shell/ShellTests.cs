using MeltShop.Web.Components.Reading;
using Bunit;
using MeltShop.Records.People;
using MeltShop.Web.Components.Shell;
using MeltShop.Web.SignIn;
using MeltShop.Web.Tests.Texts;
using MeltShop.Web.Texts;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;

namespace MeltShop.Web.Tests.Components.Shell;

public sealed class ShellTests : ComponentTest
{
    public ShellTests() => Services.AddScoped<QuietAddress>();

    [Fact]
    public void Navigation_SignedIn_NamesThePersonAndOffersEveryTask()
    {
        AddAuthorization().SetAuthorized("Test Melter");
        var rail = Render<Navigation>();

        Assert.Equal("Test Melter", rail.Find("[data-testid=person]").TextContent);
        Assert.Equal(["Floor", "Charge", "Heats", "Lab", "Yard", "Grades", "Ladles", "Orders", "Recall", "Import", "Find"], rail.FindAll("nav li:not(.narrow)").Select(place => place.TextContent.Trim()));
        Assert.Equal("/sign-out", rail.Find("form[method=post]").GetAttribute("action"));
    }

    [Theory]
    [InlineData(Role.Melter, "Floor Charge Heats", "Lab Yard Grades Ladles Orders Recall Import")]
    [InlineData(Role.Metallurgist, "Floor Charge Heats Lab Yard Grades Ladles", "Orders Recall Import")]
    [InlineData(Role.Supervisor, "Floor Heats Yard Orders Recall", "Charge Lab Grades Ladles Import Trail")]
    [InlineData(Role.Inspector, "Floor Heats Lab Grades Trail", "Charge Yard Ladles Orders Recall Import")]
    [InlineData(Role.Administrator, "Floor Shop People Trail", "Charge Heats Lab Yard Grades Ladles Orders Recall Import")]
    public void Navigation_OfARole_ShowsItsDailyWorkAndHasTheRestBehindOnePress(string role, string daily, string more)
    {
        var person = AddAuthorization().SetAuthorized("Test Person");
        person.SetClaims([new(PersonClaims.Role, role)]);
        var rail = Render<Navigation>();

        Assert.Equal(daily.Split(' '), rail.FindAll("nav > ul > li > a:not([data-find])").Select(place => place.TextContent.Trim()));
        Assert.Equal(more.Split(' ', StringSplitOptions.RemoveEmptyEntries), rail.FindAll("nav details li:not(.narrow)").Select(place => place.TextContent.Trim()));
    }

    [Fact]
    public void Navigation_OfEveryRoleAtOnce_FitsOnATabletAllTheSame()
    {
        var person = AddAuthorization().SetAuthorized("First Administrator");
        person.SetClaims([.. Role.All.Select(role => new System.Security.Claims.Claim(PersonClaims.Role, role))]);
        var rail = Render<Navigation>();

        Assert.Equal(7, rail.FindAll("nav > ul > li > a:not([data-find])").Count);
        Assert.Equal(["Orders", "Recall", "Import", "Shop", "People", "Trail"], rail.FindAll("nav details li:not(.narrow)").Select(place => place.TextContent.Trim()));
    }

    [Theory]
    [InlineData(Role.Melter, "")]
    [InlineData(Role.Metallurgist, "Heats Yard Grades Ladles")]
    [InlineData(Role.Supervisor, "Yard Recall")]
    [InlineData(Role.Inspector, "Grades Trail")]
    [InlineData(Role.Administrator, "Trail")]
    public void Navigation_OnAPhone_HasDailyWorkForWhichThereIsNoRoomBehindThePress(string role, string behind)
    {
        var person = AddAuthorization().SetAuthorized("Test Person");
        person.SetClaims([new(PersonClaims.Role, role)]);
        var rail = Render<Navigation>();

        Assert.Equal(behind, string.Join(' ', rail.FindAll("nav > ul > li.wide").Select(place => place.TextContent.Trim())));
        Assert.Equal(behind, string.Join(' ', rail.FindAll("nav details li.narrow").Select(place => place.TextContent.Trim())));
    }

    [Fact]
    public void Navigation_NotSignedIn_OffersToSignIn()
    {
        AddAuthorization();

        Assert.NotNull(Render<Navigation>().Find("a[href='/sign-in']"));
    }

    [Fact]
    public void Navigation_InThePseudoLanguage_HasNoWordOutsideItsTexts()
    {
        Speak(PseudoLanguage.Culture);
        AddAuthorization().SetAuthorized("Test Melter");

        Assert.Empty(Marks.WordsOutside(Render<Navigation>().Nodes, "Test Melter"));
    }

    [Theory]
    [InlineData("true", 1)]
    [InlineData("false", 0)]
    [InlineData(null, 0)]
    public void DemoStrip_Drawn_IsThereInTheDemoOnly(string? demo, int strips)
    {
        Services.AddSingleton<IConfiguration>(new ConfigurationBuilder()
            .AddInMemoryCollection([new("MeltShop:Demo", demo)]).Build());

        Assert.Equal(strips, Render<DemoStrip>().FindAll("[data-testid=demo]").Count);
    }

    [Theory]
    [InlineData(true, "interactive")]
    [InlineData(false, "static")]
    public void CircuitMark_Drawn_SaysWhetherTheCircuitIsLive(bool isLive, string state)
    {
        SetRendererInfo(new Microsoft.AspNetCore.Components.RendererInfo(isLive ? "Server" : "Static", isLive));

        Assert.Equal(state, Render<CircuitMark>().Find("[data-testid=circuit]").GetAttribute("data-state"));
    }

    [Fact]
    public void ReconnectNotice_Drawn_HasOurWordsForEveryState()
    {
        var notice = Render<ReconnectNotice>().Find("#components-reconnect-modal");

        Assert.Contains("No connection to the server", notice.QuerySelector(".reconnect-trying")!.TextContent, StringComparison.Ordinal);
        Assert.NotNull(notice.QuerySelector("p.reconnect-failed"));
        Assert.NotNull(notice.QuerySelector("button[data-reconnect=load].reconnect-rejected"));
        Assert.NotNull(notice.QuerySelector("button[data-reconnect=again].reconnect-failed"));
    }
}
