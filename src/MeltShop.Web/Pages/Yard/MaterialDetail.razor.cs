using MeltShop.Operations;
using MeltShop.Operations.Yard;
using MeltShop.Records.Reading.Yard;
using MeltShop.Records.Writing;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Yard;

/// <summary>One material: what it is, what it costs, how much is there, and its analysis; each can be changed by those who may.</summary>
public sealed partial class MaterialDetail
{
    [Parameter]
    public long Id { get; set; }

    [Inject]
    private YardPage Page { get; set; } = null!;

    [Inject]
    private ChangePrice Price { get; set; } = null!;

    [Inject]
    private TellYield Yield { get; set; } = null!;

    [Inject]
    private BookStock Stock { get; set; } = null!;

    [Inject]
    private MoveLot Move { get; set; } = null!;

    [Inject]
    private CorrectAnalysis Analysis { get; set; } = null!;

    [Inject]
    private UseMaterial Use { get; set; } = null!;

    [Inject]
    private NavigationManager Addresses { get; set; } = null!;

    private string Query => new Uri(Addresses.Uri).Query;

    private Task<Outcome<Guid>> Say(EntryMade made, bool isActive) =>
        Use.Run(made.By, new(made.Key, made.ObservedAt, View!.Id, View.Version, isActive));

    protected override Task<MaterialView?> Read(CancellationToken ct) => Page.Material(Id, ct);

    protected override bool Concerns(ChangeNotice change) => change is { Kind: ChangeKind.Material } && change.Id == Id;
}
