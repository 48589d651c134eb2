using MeltShop.Metallurgy;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Components.Fields;

/// <summary>A finding in the person's language, its numbers with the person's decimal sign.</summary>
public sealed partial class FindingText
{
    [Parameter, EditorRequired]
    public Finding Finding { get; set; } = null!;

    private object[] Arguments => [.. Finding.Arguments.Select(argument => argument is double number ? NumberText.Show(number) : argument)];
}
