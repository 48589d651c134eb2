using MeltShop.Operations.Charging;
using MeltShop.Operations.Sites;
using MeltShop.Records.Reading.Charge;
using MeltShop.Records.Sites;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.SignIn;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Charge;

/// <summary>What only the metallurgist changes: confidence, what else counts, rooms, and bounds on kinds of material.</summary>
public sealed partial class ForMetallurgist
{
    private readonly EntryForm keep = new();
    private bool isKept, isOpened;

    [Parameter, EditorRequired]
    public ChargeDraft Draft { get; set; } = null!;

    /// <summary>What the shop reckons with where a plan says nothing.</summary>
    [Parameter, EditorRequired]
    public ChargeRule? Rule { get; set; }

    /// <summary>The chosen furnace; null before one is chosen.</summary>
    [Parameter, EditorRequired]
    public ChargeFurnaceView? Furnace { get; set; }

    [Parameter, EditorRequired]
    public string Currency { get; set; } = "";

    [Parameter]
    public EventCallback Changed { get; set; }

    [Inject]
    private SetChargeRule Operation { get; set; } = null!;

    [Inject]
    private SetFurnaceRoom Room { get; set; } = null!;

    [Inject]
    private ActingPerson Person { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    private WishesDraft Wishes => Draft.Wishes;

    private bool IsRuler { get; set; }

    protected override async Task OnInitializedAsync() => IsRuler = (await Person.FindAsync())?.HoldsAny(Operation.Roles) == true;

    /// <summary>What has to be put right is not left behind a fold, as after the page was read anew. Once open it stays so: nobody's field closes over what is typed.</summary>
    protected override void OnParametersSet() => isOpened |= Fields.Any(field => field.Finding is not null);

    private IEnumerable<FieldEntry> Fields => [Draft.Confidence, .. Wishes.Fields, .. Draft.Groups.SelectMany(group => group.Fields)];

    private string Words(string group) => KindText.Of(group, Text, YardText);

    private string? PerTonne(double? value) => Shop(value is { } perTonne ? ShopUnits.Current.PerTonne.Readable(perTonne) : null);

    private string? Shop(double? value) => value is { } number ? Text["ShopSays", NumberText.Show(number)].Value : null;

    /// <summary>What stands here is what the shop reckons with from now on; what stood before stays where nothing does, unless this is to be all of it.</summary>
    private async Task Keep(bool isAll)
    {
        isKept = false;
        if (Wishes.Fields.Any(field => field.Finding is not null)) return;
        if (keep.IsAccepted) keep.Open();
        var outcome = await HandingIn.Send(keep, made => Operation.Run(made.By, new(made.Key, made.ObservedAt, isAll ? Wishes.Choice() : Wishes.Choice().Over(Rule))));
        isKept = outcome?.Succeeded == true;
    }

    /// <summary>The room is remembered at the furnace; an empty field takes it away.</summary>
    private async Task KeepRoom()
    {
        isKept = false;
        if (Wishes.FurnaceM3.Finding is not null) return;
        if (keep.IsAccepted) keep.Open();
        var (furnace, m3) = (Furnace!, Wishes.FurnaceM3.Value);
        var outcome = await HandingIn.Send(keep, made => Room.Run(made.By, new(made.Key, made.ObservedAt, furnace.Id, furnace.ColdChargeM3, m3)));
        if (outcome?.Succeeded == true) Wishes.FurnaceM3.Text = "";
    }
}
