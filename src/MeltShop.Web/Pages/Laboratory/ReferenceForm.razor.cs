using MeltShop.Operations.Laboratory;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Laboratory;

/// <summary>Takes a reference material into the laboratory.</summary>
public sealed partial class ReferenceForm
{
    private readonly EntryForm form = new();
    private readonly TextEntry code, name, certificate;
    private readonly ElementRows rows;
    private bool isOpen;

    public ReferenceForm()
    {
        (code, name, certificate) = (form.Words("code", isRequired: true), form.Words("name", isRequired: true), form.Words("certificate", isRequired: true));
        rows = new(form, "values", 100, firstIsNeeded: true);
    }

    [Parameter]
    public EventCallback Saved { get; set; }

    [Inject]
    private AddReferenceMaterial Operation { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    private void Open()
    {
        isOpen = true;
        form.Open();
        if (rows.Rows.Count == 0) rows.Add();
    }

    private async Task Save()
    {
        var outcome = await HandingIn.Send(
            form,
            made => Operation.Run(made.By, new(
                made.Key, made.ObservedAt, code.Value!, name.Value!, certificate.Value!,
                [.. rows.Rows.Select(row => new CertifiedInput(row.Symbol.Value!, row.First.Needed, row.Second.Value))])),
            rows.Twice);
        if (outcome?.Succeeded != true) return;
        isOpen = false;
        await Saved.InvokeAsync();
    }
}
