using System.Reflection;
using MeltShop.Web.Tests.Repository;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Tests.Architecture;

/// <summary>
/// A page may be loaded anew into the same place at any time, after a long absence. What a person has opened, turned or chosen on it has to come back: by
/// its press, which the address names; by the address itself; as a text of a field. A new piece of state of a page is told here how it does.
/// </summary>
public sealed class PageStateTests
{
    /// <summary>What a press has opened, in a component where each such press says what: the address names it, and it is pressed again.</summary>
    private static readonly HashSet<string> Opened = ["isOpen", "opened", "open", "Open", "isAsking", "asked", "isSending"];

    /// <summary>What has just happened or is being done: over with the page that said it.</summary>
    private static readonly HashSet<string> Passing =
    [
        "hasFailed", "isSaved", "isKept", "isOutdated", "isStopped", "isChecking", "isUnknownMark", "isWorking", "isCurrent", "isLooking", "isReading", "isOffered", "isFilled", "isStarting", "isTold",
    ];

    private static readonly HashSet<string> Kept =
    [
        "FileTable.open", // by the address
        "CorrectionPlanning.asked", "LadlePreparation.asked", // which question was the last
        "TrendList.LimitWords", "ForMetallurgist.IsRuler", // what was read
        "ForMetallurgist.isOpened", // by what is refused behind it
        "WeighInCard.wasCharging", "WeighInCard.offered", "WeighInCard.before", // what the page has offered itself
        "WeighInCard.isAnswered", // of the rest, which is planned again
        "WeighInCard.isBegun", // by the mass, which is typed again
        "RestCard.ladle", "LadleTemperatureCard.ladle", "InoculationCard.ladle", // which one the form belongs to
        "MouldForm.offered", "MouldForm.kept", "MouldForm.times", // what the form has offered itself, and what was just kept
        "ImportList.choice", "ImportList.name", "ImportList.files", "ImportList.looks", // of the file, which is chosen again
        "OrderEnd.answered", "CertificateCard.issued", "UnitCard.seenSampleId", "KeptPlan.openedId", // what of the records was shown
        "ChargePlanning.saidKg", // by the address
        "MapMaking.shown", "EndCard.seen", "PriceForm.opened", // what of the records stands in the form
        "HandMasses.isAllShown", "PlanMaterials.isAllShown", "RefusedTable.Shown", "ColumnTable.part", // how much of a list: one press, in view, and nothing typed is hidden by it
    ];

    private static readonly ILookup<string, string> Markup = Checkout.FilesEndingIn(".razor").ToLookup(path => Path.GetFileNameWithoutExtension(path), Checkout.Read);

    [Fact]
    public void State_OfAPage_ComesBackWhenItIsLoadedAnew() => Offences.None(
        from part in typeof(Program).Assembly.GetTypes()
        where part.Namespace?.StartsWith("MeltShop.Web.Pages.", StringComparison.Ordinal) == true && part.IsAssignableTo(typeof(ComponentBase))
        from field in part.GetFields(BindingFlags.Instance | BindingFlags.NonPublic | BindingFlags.DeclaredOnly)
        where !field.IsInitOnly && IsSimple(field.FieldType) && !IsGiven(part, NameOf(field))
        let name = NameOf(field)
        where !(Opened.Contains(name) && Markup[part.Name].Any(text => text.Contains("data-opens=", StringComparison.Ordinal))) && !Passing.Contains(name) && !Kept.Contains($"{part.Name}.{name}")
        select $"{part.Name}.{name}");

    private static string NameOf(FieldInfo field) => field.Name.StartsWith('<') ? field.Name[1..field.Name.IndexOf('>')] : field.Name;

    private static bool IsSimple(Type type) => (Nullable.GetUnderlyingType(type) ?? type) is var plain && (plain.IsPrimitive || plain.IsEnum || plain == typeof(string) || plain == typeof(Guid) || plain == typeof(decimal));

    /// <summary>By another component, or by the address.</summary>
    private static bool IsGiven(Type part, string name) => part.GetProperty(name, BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic) is { } property
        && property.GetCustomAttributes().Any(attribute => attribute is ParameterAttribute or SupplyParameterFromQueryAttribute or CascadingParameterAttribute);
}
