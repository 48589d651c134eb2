using System.Text.Json;
using MeltShop.Records.People;
using MeltShop.Records.Reading.Trail;
using MeltShop.Records.Writing;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Trail;

/// <summary>What everybody entered, a page at a time; the place stays in the address.</summary>
public sealed partial class TrailList
{
    /// <summary>The roles of <see cref="TrailPage.Roles"/>, as a rule of the page.</summary>
    public const string Readers = Role.Supervisor + "," + Role.Inspector + "," + Role.Administrator;

    private static readonly JsonSerializerOptions Indented = new(RecordsJson.Options) { WriteIndented = true };

    [Inject]
    private TrailPage Page { get; set; } = null!;

    [SupplyParameterFromQuery(Name = "before")]
    public long? BeforeInAddress { get; set; }

    protected override async Task<TrailView?> Read(CancellationToken ct) => May(TrailPage.Roles) ? await Page.Before(BeforeInAddress, ct) : null;

    protected override bool IsEmpty(TrailView view) => view.Entries.Count == 0 && BeforeInAddress is null;

    /// <summary>Who reads it reads one state; a list that moved under the eyes with every entry of the shop would be of no use.</summary>
    protected override bool Concerns(ChangeNotice change) => false;

    /// <summary>What was done, in words; an operation that this version no longer knows by its name.</summary>
    private string What(string operation) => Changes[$"Operation.{operation}"] is { ResourceNotFound: false } words ? words : operation;

    private static string Written(JsonElement asked) => JsonSerializer.Serialize(asked, Indented);
}
