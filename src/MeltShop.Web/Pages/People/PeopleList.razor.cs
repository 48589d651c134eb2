using MeltShop.Operations.People;
using MeltShop.Records.Reading.People;
using MeltShop.Records.Writing;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.People;

/// <summary>Who works here, and what they may do.</summary>
public sealed partial class PeopleList
{
    private long? opened;
    private GivenPassword? given;

    [Inject]
    private PeoplePage Page { get; set; } = null!;

    protected override async Task<PeopleView?> Read(CancellationToken ct) => await Page.All(StartPassword.Claim, ct);

    protected override bool Concerns(ChangeNotice change) => change.Kind is ChangeKind.Person;

    private static string Way(PersonAccount person) => person switch
    {
        { Standing.IsActive: false } => "Way.Left",
        { HasPassword: false } => "Way.NoPassword",
        { HasStartPassword: true } => "Way.StartPassword",
        { HasPin: true } => "Way.PasswordAndPin",
        _ => "Way.Password",
    };

    private static string? Tag(PersonAccount person) => person.Standing.IsActive && !person.HasPassword ? "tag tag-watch" : null;

    private async Task Give(GivenPassword said)
    {
        given = said;
        opened = null;
        await Reload();
    }
}

/// <summary>A password that an administrator tells somebody; it is on the page until it was told, and nowhere else.</summary>
public sealed record GivenPassword(string Name, string UserName, string Password);
