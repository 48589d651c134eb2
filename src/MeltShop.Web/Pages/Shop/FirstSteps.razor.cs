using MeltShop.Records.Reading.Sites;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Shop;

/// <summary>What is still missing before the first heat, each with the way to it.</summary>
public sealed partial class FirstSteps
{
    [Parameter, EditorRequired]
    public SetUpView View { get; set; } = null!;

    private static string Place(SetUpStep step) => step switch
    {
        SetUpStep.Site => "/shop#site-form",
        SetUpStep.Furnace => "/furnaces",
        SetUpStep.Grade => "/grades",
        SetUpStep.Material => "/yard/new",
        SetUpStep.Ladle => "/equipment",
        _ => "/people",
    };

    private string Why(SetUpStep step) => step is SetUpStep.People
        ? Text["StepWords.People", string.Join(", ", View.RolesWithout.Select(role => States["Role." + role].Value))]
        : Text["StepWords." + step];
}
