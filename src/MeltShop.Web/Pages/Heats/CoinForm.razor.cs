using MeltShop.Operations.Laboratory;
using MeltShop.Records.Laboratory;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Heats;

/// <summary>Says that a coin is on its way: when it was taken is known before its result is.</summary>
public sealed partial class CoinForm
{
    private readonly EntryForm form = new();
    private readonly TextEntry number, kind, remarks;
    private readonly QuantityEntry minutes;

    public CoinForm()
    {
        number = form.Words("coinNumber", isRequired: true);
        kind = form.Choice("kind", isRequired: true).Showing(nameof(SampleKind.Bath));
        remarks = form.Words("remarks");
        minutes = MinutesAgo.Field(form);
    }

    [Parameter, EditorRequired]
    public long HeatId { get; set; }

    [Parameter, EditorRequired]
    public EventCallback Done { get; set; }

    [Inject]
    private SendCoin Operation { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    private IEnumerable<Choice> Kinds => SampleKinds.OfTheBath.Append(SampleKind.LadleBase).Select(name => new Choice(name.ToString(), Text["Kind." + name]));

    private async Task Save()
    {
        var outcome = await HandingIn.Send(form, made => Operation.Run(made.By, new(
            made.Key, minutes.Before(made.ObservedAt), HeatId, null, Enum.Parse<SampleKind>(kind.Value!), number.Value!, remarks.Value)));
        if (outcome?.Succeeded == true) await Done.InvokeAsync();
    }
}
