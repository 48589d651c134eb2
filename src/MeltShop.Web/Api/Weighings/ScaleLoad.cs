using MeltShop.Web.Api.Reading;

namespace MeltShop.Web.Api.Weighings;

/// <summary>What a scale shows once its load stands still, kg.</summary>
internal sealed record ScaleLoad(double GrossKg, double TareKg)
{
    public double NetKg => GrossKg - TareKg;

    public static ScaleLoad Read(ObjectReader body)
    {
        var (gross, tare) = (body.Needed("grossKg", NumberRule.Mass), body.Number("tareKg", NumberRule.Mass) ?? 0);
        if (!body.Has("stable")) body.Report("stable", "field.missing");
        if (body.Flag("stable") is false) body.Report("stable", "scale.unstable");
        if (gross <= tare) body.Report("tareKg", "scale.nothingLeft", gross, tare);
        return new(gross, tare);
    }
}
