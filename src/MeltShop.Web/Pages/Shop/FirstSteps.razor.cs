using MeltShop.Records.Reading.Sites;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Shop;

/// <summary>What is still missing before the first heat, each with the way to it.</summary>
public sealed partial class FirstSteps
{
    [Parameter, EditorRequired]
    public SetUpView View { get; set; } = null!;

    /// <summary>They may see the people.</summary>
    [Parameter, EditorRequired]
    public bool IsAdministrator { get; set; }

    /// <summary>The shop is named on this page; the people are seen by an administrator only.</summary>
    private string? Place(SetUpStep step) => step switch
    {
        SetUpStep.Site => null,
        SetUpStep.Furnace => "/furnaces",
        SetUpStep.Grade => "/grades/new",
        SetUpStep.Material => "/yard/new",
        SetUpStep.Ladle => "/equipment",
        _ => IsAdministrator ? "/people" : null,
    };

    private string Why(SetUpStep step) => step is SetUpStep.People
        ? Text["StepWords.People", string.Join(", ", View.RolesWithout.Select(role => States["Role." + role].Value))]
        : Text["StepWords." + step];
}
