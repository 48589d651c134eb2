using System.ComponentModel;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Quantities;
using MeltShop.Web.Api.Reading;

namespace MeltShop.Web.Api.DerivedQuantities;

/// <summary>The question of the analysis endpoint as the OpenAPI document shows it.</summary>
internal sealed record AnalysisRequest
{
    [Description("Mass percent by element symbol; an element absent was not measured.")]
    public required IReadOnlyDictionary<string, double> Analysis { get; init; }

    [Description("Form of the carbon equivalent; C + (Si + P)/3 where absent.")]
    public string? CeForm { get; init; }
}

/// <summary>The question, read.</summary>
internal sealed record AnalysisQuestion(Analysis Analysis, CarbonEquivalentForm Form)
{
    public static AnalysisQuestion Read(ObjectReader request)
    {
        var analysis = request.NeededAnalysis("analysis");
        var id = request.Text("ceForm");
        var form = id is null ? CarbonEquivalent.Default : CarbonEquivalent.Find(id);
        if (form is null)
            request.Report("ceForm", "carbonEquivalent.unknown", id!, string.Join(", ", CarbonEquivalent.Forms.Select(f => $"{f.Id} ({f.Expression})")));
        return new(analysis, form ?? CarbonEquivalent.Default);
    }
}
