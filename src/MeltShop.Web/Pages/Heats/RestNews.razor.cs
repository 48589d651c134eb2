using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Operations.Charging;
using MeltShop.Records.Reading.Yard;
using MeltShop.Web.Pages.Charge;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Heats;

/// <summary>What became of the target since something was weighed in: kept, tight, or out of reach and what does the least harm.</summary>
public sealed partial class RestNews
{
    [Parameter, EditorRequired]
    public RestAnswer? Rest { get; set; }

    /// <summary>What was asked before anything was weighed.</summary>
    [Parameter, EditorRequired]
    public ChargeProblem Asked { get; set; } = null!;

    /// <summary>The materials, for their names.</summary>
    [Parameter, EditorRequired]
    public IReadOnlyList<MaterialView> Yard { get; set; } = [];

    [Parameter, EditorRequired]
    public double CapacityKg { get; set; }

    [Parameter, EditorRequired]
    public bool HasFailed { get; set; }

    /// <summary>Nothing more is asked for: what is in is what counts.</summary>
    [Parameter, EditorRequired]
    public bool IsAllIn { get; set; }

    /// <summary>Nothing is asked for before a metallurgist has looked: see <see cref="FirstPlan.IsStopped"/>.</summary>
    [Parameter, EditorRequired]
    public bool IsStopped { get; set; }

    /// <summary>Liquid in the furnace by its ledger, kg.</summary>
    [Parameter, EditorRequired]
    public double InFurnaceKg { get; set; }

    /// <summary>What is said of the target: of the charge as it will be, or of what is in where nothing more is coming.</summary>
    private RestAnswer? Told => IsAllIn && Rest?.AsItIs is { } standing ? standing : Rest;

    /// <summary>What to do where the rest was not planned anew.</summary>
    private string Unplanned => IsStopped ? Text["Stop", MassText.Show(InFurnaceKg), MassText.Show(CapacityKg)] : Text["FirstPlan"];

    private bool IsOfWhatIsIn => !ReferenceEquals(Told, Rest);

    /// <summary>Less than this is not worth a word, kg.</summary>
    private const double LeastShortKg = 0.5;

    private Charge.MissText Words => new(ChargeText, LimitText, YardText);

    private static string Key(Miss miss) => miss.Kind is MissKind.LiquidKg ? "liquid" : miss.Name;

    private string NameOf(string code) => Yard.FirstOrDefault(item => item.Code == code)?.Name ?? code;
}
