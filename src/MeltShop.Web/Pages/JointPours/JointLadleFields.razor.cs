using System.Globalization;
using MeltShop.Records.Reading.Ladles;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.JointPours;

/// <summary>The fields of one ladle.</summary>
public sealed partial class JointLadleFields
{
    [Parameter, EditorRequired]
    public JointLadleDraft Draft { get; set; } = null!;

    [Parameter, EditorRequired]
    public IReadOnlyList<EquipmentLadle> Ladles { get; set; } = [];

    [Parameter]
    public EventCallback Changed { get; set; }

    private IEnumerable<Choice> Choices => Ladles.Select(of => new Choice(of.Ladle.Id.ToString(CultureInfo.InvariantCulture), of.Ladle.Name));

    private Task Chosen()
    {
        if (Ladles.FirstOrDefault(of => of.Ladle.Id.ToString(CultureInfo.InvariantCulture) == Draft.Ladle.Value) is { } chosen) Draft.Take(chosen.Ladle);
        return Changed.InvokeAsync();
    }
}
