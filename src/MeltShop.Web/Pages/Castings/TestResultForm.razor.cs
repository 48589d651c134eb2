using MeltShop.Metallurgy.Grades;
using MeltShop.Operations.Castings;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Castings;

/// <summary>Records what a test piece was tested for; a field that is left empty was not tested.</summary>
public sealed partial class TestResultForm
{
    private readonly EntryForm form = new();
    private readonly IReadOnlyList<(CastProperty Property, QuantityEntry Entry)> values;
    private readonly TextEntry method;
    private readonly TextEntry reason;

    public TestResultForm()
    {
        values = [.. Enum.GetValues<CastProperty>().Select(p => (p, form.Quantity($"values.{p}", TestRange.Of(p).Least, TestRange.Of(p).Most)))];
        (method, reason) = (form.Words("method"), form.Words("reason"));
    }

    [Parameter, EditorRequired]
    public TestedPiece Tested { get; set; } = null!;

    [Inject]
    private RecordTestResults Operation { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    private async Task Save()
    {
        if (form.IsAccepted) form.Open();
        var outcome = await HandingIn.Send(form, made => Operation.Run(made.By, new(
            made.Key, made.ObservedAt, Tested.Piece.Id,
            values.Where(v => v.Entry.Value is not null).ToDictionary(v => v.Property, v => v.Entry.Value!.Value), method.Value, reason.Value)));
        if (outcome?.Succeeded != true) return;
        foreach (var (_, entry) in values) entry.Showing(null);
        reason.Showing(null);
    }
}
