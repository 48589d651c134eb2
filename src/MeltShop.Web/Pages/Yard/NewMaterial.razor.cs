using MeltShop.Operations.Yard;
using MeltShop.Records.Yard;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Components.Reading;
using MeltShop.Web.SignIn;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Yard;

/// <summary>Takes a material into the yard; whoever comes from the charge page goes back to the charge, which can use it at once.</summary>
public sealed partial class NewMaterial
{
    private const double MostPrice = 1e6;

    private readonly EntryForm form = new();
    private readonly List<AnalysisRow> rows = [];
    private readonly HashSet<string> cautions = [];
    private readonly TextEntry code, name, kind, uses, source, sourceKind;
    private readonly QuantityEntry price, yield, piece, density, share;
    private bool isOffered;

    public NewMaterial()
    {
        (code, name) = (form.Words("code", isRequired: true), form.Words("name", isRequired: true));
        (kind, uses) = (form.Choice("kind", isRequired: true), form.Choice("uses", isRequired: true));
        price = form.PerTonne("pricePerTonne", -MostPrice, MostPrice, isRequired: true);
        yield = form.Quantity("metallicYieldPercent", 0, 100);
        piece = form.Mass("pieceKg", 0);
        density = form.Quantity("bulkDensityTonnesPerM3", 0, 25);
        share = form.Quantity("maxSharePercent", 0, 100);
        (source, sourceKind) = (form.Words("source", isRequired: true), form.Choice("sourceKind", isRequired: true));
        uses.Showing(nameof(MaterialUses.Charge));
    }

    /// <summary>The charge that is being planned; anything else is no way back.</summary>
    [SupplyParameterFromQuery(Name = "back")]
    public string? BackInAddress { get; set; }

    [Inject]
    private AddMaterial Operation { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    [Inject]
    private ActingPerson Person { get; set; } = null!;

    [Inject]
    private ShopSite Site { get; set; } = null!;

    [Inject]
    private NavigationManager Addresses { get; set; } = null!;

    private string? Back => BackInAddress is { } back && (back == "/charge" || back.StartsWith("/charge?", StringComparison.Ordinal)) ? back : null;

    private IEnumerable<Choice> Kinds => Enum.GetNames<MaterialKind>().Select(value => new Choice(value, Text["Kind." + value]));

    private IEnumerable<Choice> SourceKinds => AnalysisSource.Kinds.Select(value => new Choice(value, Text["SourceKind." + value]));

    /// <summary>What is charged may go into the bath as well, where that is said.</summary>
    private IEnumerable<Choice> UsesOf => new[]
    {
        MaterialUses.Charge, MaterialUses.Charge | MaterialUses.BathAddition, MaterialUses.BathAddition, MaterialUses.Treatment, MaterialUses.Inoculation,
    }.Select(use => new Choice(use.ToString(), string.Join(", ", use.ToString().Split(", ").Select(part => Text["Use." + part].Value))));

    protected override async Task OnInitializedAsync()
    {
        await Site.Load(CancellationToken.None); // the price is asked for in the shop's currency
        isOffered = (await Person.FindAsync())?.HoldsAny(Operation.Roles) == true;
    }

    private void Tick(string caution, bool isTicked)
    {
        if (isTicked) cautions.Add(caution);
        else cautions.Remove(caution);
    }

    private async Task Save()
    {
        var outcome = await HandingIn.Send(
            form,
            made => Operation.Run(made.By, new(
                made.Key, made.ObservedAt, code.Value!, name.Value!, Enum.Parse<MaterialKind>(kind.Value!), Enum.Parse<MaterialUses>(uses.Value!),
                PriceText.Recorded(price)!.Value, yield.Value, [.. rows.Select(row => row.Input())], source.Value!, sourceKind.Value!,
                piece.Value, density.Value, share.Value, string.Join(' ', MaterialCautions.All.Where(cautions.Contains)))),
            () => [.. AnalysisRows.Twice(rows), .. PriceText.Check(price)]);
        if (outcome?.Succeeded == true) Addresses.NavigateTo(Back ?? $"/yard/{outcome.Value}");
    }
}
