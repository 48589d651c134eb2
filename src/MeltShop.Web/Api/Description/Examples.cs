using System.Diagnostics.CodeAnalysis;

namespace MeltShop.Web.Api.Description;

/// <summary>Requests that can be sent as they are; a test sends each. Figures are invented, within what such iron really holds.</summary>
internal static class Examples
{
    [StringSyntax(StringSyntaxAttribute.Json)]
    public const string Charge = """
        {
          "meltKg": 6000, "meltToleranceKg": 0,
          "heel": {"kg": 600, "analysis": {"C": 3.6, "Si": 1.9, "Mn": 0.22}},
          "materials": [
            {"code": "plate-offcuts", "pricePerTonne": 330, "analysis": {"C": 0.12, "Si": 0.2, "Mn": 0.9},
             "spread": {"Mn": 0.25, "Cu": 0.05}, "metallicYieldPercent": 98, "recoveryPercent": {"C": 95, "Mn": 92},
             "availableKg": 12000, "maxKg": 4000, "maxPercent": 60},
            {"code": "pig-iron", "pricePerTonne": 480, "analysis": {"C": 4.2, "Si": 1.0, "Mn": 0.05, "P": 0.04}, "metallicYieldPercent": 99},
            {"code": "carburiser", "pricePerTonne": 900, "analysis": {"C": 99}, "recoveryPercent": {"C": 85}},
            {"code": "ferro-silicon", "pricePerTonne": 1500, "analysis": {"Si": 75, "Al": 1.2}, "recoveryPercent": {"Si": 90, "Al": 0}}
          ],
          "limits": [
            {"quantity": "C", "min": 3.6, "max": 3.75},
            {"quantity": "Si", "min": 1.4, "max": 1.6},
            {"quantity": "Mn", "max": 0.4},
            {"quantity": "CE", "terms": {"C": 1, "Si": 0.333333, "P": 0.333333}, "constant": 0, "max": 4.45}
          ],
          "confidencePercent": 50
        }
        """;

    [StringSyntax(StringSyntaxAttribute.Json)]
    public const string Correction = """
        {
          "bathKg": 6000, "temperatureC": 1480, "analysis": {"C": 3.48, "Si": 1.35, "Mn": 0.3},
          "additions": [
            {"code": "carburiser", "pricePerTonne": 900, "analysis": {"C": 99}, "recoveryPercent": {"C": 85}, "heatKWhPerTonne": 1500},
            {"code": "ferro-silicon", "pricePerTonne": 1500, "analysis": {"Si": 75}, "recoveryPercent": {"Si": 95}, "heatKWhPerTonne": -400}
          ],
          "limits": [{"quantity": "C", "min": 3.6, "max": 3.75, "margin": 0.02}, {"quantity": "Si", "min": 1.4, "max": 1.6, "margin": 0.02}],
          "maxAdditionKg": 100, "capacityKg": 6200, "maxTapOffKg": 0
        }
        """;

    [StringSyntax(StringSyntaxAttribute.Json)]
    public const string Treatment = """
        {
          "ironKg": 1000, "temperatureC": 1480, "baseAnalysis": {"C": 3.6, "S": 0.012, "Si": 1.5},
          "targetMgPercent": 0.04, "atMinutes": 10,
          "alloy": {"analysis": {"Mg": 6, "Si": 45}, "recoveryPercent": {}},
          "mgRecoveryPercent": 50, "recoveryTemperatureC": null, "fade": {"perMinute": 0.03}, "sulphurLeftPercent": 0.005
        }
        """;

    [StringSyntax(StringSyntaxAttribute.Json)]
    public const string Analysis = """{"analysis": {"C": 3.6, "Si": 2.4, "Mn": 0.25, "P": 0.03, "S": 0.01, "Cu": 0.4, "Sn": 0.01, "Mg": 0.042}}""";

    [StringSyntax(StringSyntaxAttribute.Json)]
    public const string Burns = """
        {"burns": [{"C": 3.61, "Si": 2.31}, {"C": 3.6, "Si": 2.33}, {"C": 3.72, "Si": 2.32}], "repeatability": {"C": 0.02}}
        """;
}
