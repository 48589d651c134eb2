using Bunit;
using MeltShop.Operations.People;
using MeltShop.Records.People;
using MeltShop.Records.Reading.People;
using MeltShop.Web.Pages.People;

namespace MeltShop.Web.Tests.Pages.People;

/// <summary>People, as an administrator adds them and takes their rights away.</summary>
public sealed class PeopleListTests : ShopTest
{
    protected override async Task Prepare() => Assert.True((await The<AddPerson>().Run(
        Founder, new(Guid.NewGuid(), Now, "anna", "Anna Example", Role.All) { Password = Password }, Cancellation)).Succeeded);

    [Fact]
    public async Task Person_AddedWithAMadePassword_IsShownOnceAndMayWorkAsTicked()
    {
        var page = Open();
        page.Find("[data-testid=add-person]").Click();
        Type(page, "displayName", "Ben Example");
        Type(page, "userName", "ben");
        page.Find("[data-testid=make-password]").Click();
        var password = page.Find("[data-field=password] input").GetAttribute("value")!;
        foreach (var role in new[] { Role.Supervisor, Role.Melter }) page.Find($"[data-role={role}]").Change(true);
        page.Find("[data-testid=person-form]").Submit();

        page.WaitForAssertion(() => Assert.Equal(password, page.Find("[data-testid=given-password]").TextContent), Patience);
        Assert.Equal(12, password.Length);
        Assert.Contains("melter, supervisor", page.Find("[data-person=ben]").TextContent, StringComparison.Ordinal);
        Assert.Contains("start password", page.Find("[data-person=ben]").TextContent, StringComparison.Ordinal);
        page.Find("[data-testid=given] button").Click();
        page.WaitForAssertion(() => Assert.DoesNotContain(password, page.Markup, StringComparison.Ordinal), Patience);
        Assert.True((await Person("ben")).Standing.IsLike(new("Ben Example", true, [Role.Melter, Role.Supervisor])));
    }

    [Fact]
    public void Person_WithoutARoleOrWithAShortPassword_IsRefusedAtItsFieldAndNothingTypedIsLost()
    {
        var page = Open();
        page.Find("[data-testid=add-person]").Click();
        Type(page, "displayName", "Ben Example");
        Type(page, "userName", "ben");
        Type(page, "password", "short");
        page.Find("[data-testid=person-form]").Submit();
        page.WaitForAssertion(() => Assert.Equal("choice.missing", page.Find("[data-field=personRoles] .field-error").GetAttribute("data-code")), Patience);
        page.Find($"[data-role={Role.Melter}]").Change(true);
        page.Find("[data-testid=person-form]").Submit();

        page.WaitForAssertion(() => Assert.Equal("password.tooShort", page.Find("[data-field=password] .field-error").GetAttribute("data-code")), Patience);
        Assert.Equal("Ben Example", page.Find("[data-field=displayName] input").GetAttribute("value"));
        Assert.True(page.Find($"[data-role={Role.Melter}]").HasAttribute("checked"));
    }

    [Fact]
    public async Task LastAdministrator_TakenTheirRights_KeepsThemAndIsToldWhy()
    {
        var page = Open();
        page.Find("[data-person=anna] button").Click();
        page.Find("[data-testid=person-change] [data-role=administrator]").Change(false);
        page.Find("[data-testid=person-change]").Submit();

        page.WaitForAssertion(() => Assert.Equal("administrator.last", page.Find("[data-field=personRoles] .field-error").GetAttribute("data-code")), Patience);
        Assert.Equal(Role.All, (await Person("anna")).Standing.Roles);
    }

    [Fact]
    public async Task Person_WhoLeft_StaysOnTheListAndGetsNoPassword()
    {
        await The<AddPerson>().Run(Founder, new(Guid.NewGuid(), Now, "ben", "Ben Example", [Role.Melter]) { Password = Password }, Cancellation);
        var page = Open();
        page.Find("[data-person=ben] button").Click();
        page.Find("[data-testid=person-change] [data-field=isActive] select").Change(bool.FalseString);
        page.Find("[data-testid=person-change]").Submit();

        page.WaitForAssertion(() => Assert.Contains("has left", page.Find("[data-person=ben]").TextContent, StringComparison.Ordinal), Patience);
        page.Find("[data-person=ben] button").Click();
        page.Find("[data-testid=person-change]");
        Assert.Empty(page.FindAll("[data-testid=give-password]"));
        Assert.False((await Person("ben")).Standing.IsActive);
    }

    [Fact]
    public async Task Password_Forgotten_IsGivenAnewAndShownOnce()
    {
        var page = Open();
        page.Find("[data-person=anna] button").Click();
        page.Find("[data-testid=give-password] [data-field=password] input").Change("a start password");
        page.Find("[data-testid=give-password]").Submit();

        page.WaitForAssertion(() => Assert.Equal("a start password", page.Find("[data-testid=given-password]").TextContent), Patience);
        Assert.True((await Person("anna")).HasStartPassword);
    }

    private async Task<PersonAccount> Person(string userName) => (await The<PeoplePage>().All(StartPassword.Claim, Cancellation)).People.Single(p => p.UserName == userName);

    private IRenderedComponent<PeopleList> Open()
    {
        SignIn(Role.Administrator);
        var page = Render<PeopleList>();
        page.WaitForState(() => page.FindAll("[data-state=ready]").Count > 0, Patience);
        return page;
    }

    private static void Type(IRenderedComponent<PeopleList> page, string path, string text) => page.Find($"[data-testid=person-form] [data-field={path}] input").Change(text);
}
