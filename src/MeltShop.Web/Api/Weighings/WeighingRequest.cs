using MeltShop.Web.Api.Reading;

namespace MeltShop.Web.Api.Weighings;

/// <summary>What a scale sends of a load for the furnace.</summary>
/// <param name="Id">The sender's own name of this weighing; sent again, it is answered again and recorded once.</param>
/// <param name="Heat">The heat's number.</param>
/// <param name="Material">The material's code.</param>
/// <param name="By">Sign-in name of the person who weighs: a fact has a person.</param>
/// <param name="ObservedAt">When it was weighed; null for now.</param>
/// <param name="IntoBath">Into the molten bath instead of the charge; null for what its time says, before or after the first bath sample, or where there is none the end of charging.</param>
/// <param name="Lot">As it stands on the bag or the pile; null where the scale does not know it.</param>
internal sealed record WeighingRequest(
    string Id, string Heat, string Material, string By, ScaleLoad Load, DateTimeOffset? ObservedAt, bool? IntoBath, string? Lot)
{
    public static WeighingRequest Read(ObjectReader body)
    {
        var load = ScaleLoad.Read(body);
        return new(
            body.NeededText("id"), body.NeededText("heat"), body.NeededText("material"), body.NeededText("by"), load, body.Instant("observedAt"), body.Flag("intoBath"),
            body.Text("lot"));
    }
}
