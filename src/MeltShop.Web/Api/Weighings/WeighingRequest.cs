using MeltShop.Web.Api.Reading;

namespace MeltShop.Web.Api.Weighings;

/// <summary>What a scale sends once its load stands still.</summary>
/// <param name="Id">The sender's own name of this weighing; sent again, it is answered again and recorded once.</param>
/// <param name="Heat">The heat's number.</param>
/// <param name="Material">The material's code.</param>
/// <param name="By">Sign-in name of the person who weighs: a fact has a person.</param>
/// <param name="ObservedAt">When it was weighed; null for now.</param>
/// <param name="IntoBath">Into the molten bath instead of the charge; null for what the heat's state says.</param>
internal sealed record WeighingRequest(
    string Id, string Heat, string Material, string By, double GrossKg, double TareKg, DateTimeOffset? ObservedAt, bool? IntoBath)
{
    /// <summary>What went into the furnace, kg.</summary>
    public double NetKg => GrossKg - TareKg;

    public static WeighingRequest Read(ObjectReader body)
    {
        var (gross, tare) = (body.Needed("grossKg", NumberRule.Mass), body.Number("tareKg", NumberRule.Mass) ?? 0);
        if (!body.Has("stable")) body.Report("stable", "field.missing");
        if (body.Flag("stable") is false) body.Report("stable", "scale.unstable");
        if (gross <= tare) body.Report("tareKg", "scale.nothingLeft", gross, tare);
        return new(
            body.NeededText("id"), body.NeededText("heat"), body.NeededText("material"), body.NeededText("by"), gross, tare,
            body.Instant("observedAt"), body.Flag("intoBath"));
    }
}
