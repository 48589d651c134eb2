using System.Globalization;
using MeltShop.Operations.Checking;
using MeltShop.Operations.Laboratory;
using MeltShop.Records.Laboratory;
using MeltShop.Web.Api.Reading;

namespace MeltShop.Web.Api.Samples;

/// <summary>The figures of a cup or a chill wedge, by the rules by which a person may enter them.</summary>
internal static class FigureReader
{
    public static IReadOnlyList<FigureInput> Read(ObjectReader body, SampleKind kind)
    {
        if (body.NeededObject("figures") is not { } given) return [];
        var read = Enum.GetValues<FigureQuantity>().Select(quantity => (Quantity: quantity, Value: given.Number(JsonNames.Of(quantity), NumberRule.Any)));
        List<FigureInput> figures =
        [
            .. read.Where(f => f.Value is not null).Select(f => new FigureInput(f.Quantity, f.Value!.Value, f.Value.Value.ToString("R", CultureInfo.InvariantCulture))),
        ];
        given.RefuseTheRest();
        var fields = new FieldCheck();
        FigureInputs.Check(kind, figures, fields);
        foreach (var finding in fields.Findings)
        {
            if (finding.Path.Split('.') is [_, var quantity]) given.Report(JsonNames.Of(Enum.Parse<FigureQuantity>(quantity)), finding.Code, finding.Arguments);
            else body.Report("figures", finding.Code, finding.Arguments);
        }

        return figures;
    }
}
