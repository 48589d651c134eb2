using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Formulas;
using static MeltShop.Metallurgy.Elements.Element;

namespace MeltShop.Metallurgy.Quantities;

/// <summary>Where an iron stands relative to the eutectic. What liquidus a cup shows is another question: <see cref="Liquidus"/>.</summary>
/// <remarks>
/// The weight of phosphorus differs between the forms from 0.30 to 1/3: 0.002 of CE at 0.05 % P, 0.03 at 1 %. A form with
/// 0.54 P that goes round in forums is left out, for no text supports it.
/// </remarks>
public static class CarbonEquivalent
{
    /// <summary>The form used unless another is asked for: C + (Si + P)/3.</summary>
    public static CarbonEquivalentForm Default => Forms[0];

    /// <summary>The forms in use, the default first.</summary>
    public static IReadOnlyList<CarbonEquivalentForm> Forms { get; } =
    [
        Form("CE-a", "C + (Si + P)/3", Bibliography.Radzikowska, (C, 1), (Si, 1.0 / 3), (P, 1.0 / 3)),
        Form("CE-b", "C + Si/3", Bibliography.Koriyama, (C, 1), (Si, 1.0 / 3)),
        Form("CE-c", "C + 0.31 Si + 0.33 P", Bibliography.GermanForm, (C, 1), (Si, 0.31), (P, 0.33)),
        Form("CE-d", "C + 0.31 Si + 0.33 P − 0.027 Mn + 0.4 S", Bibliography.GermanForm,
            (C, 1), (Si, 0.31), (P, 0.33), (Mn, -0.027), (S, 0.4)),
        Form("CE-e", "C + 0.31 Si + 0.33 P − 0.027 Mn + 0.4 S + 0.053 Ni + 0.074 Cu − 0.063 Cr", Bibliography.GermanForm,
            (C, 1), (Si, 0.31), (P, 0.33), (Mn, -0.027), (S, 0.4), (Ni, 0.053), (Cu, 0.074), (Cr, -0.063)),
        Form("CE-y", "C + 0.3 (Si + P)", Bibliography.ChineseForm, (C, 1), (Si, 0.3), (P, 0.3)),
    ];

    /// <summary>The record of the default form.</summary>
    public static Formula Formula { get; } = new()
    {
        Key = "carbon-equivalent",
        Name = "Carbon equivalent",
        Sentence = "Says on which side of the eutectic (about 4.26) an iron lies.",
        Expression = "CE = C + (Si + P)/3",
        Symbols = [new("C, Si, P", "analysis", "%")],
        Unit = "%",
        Sources = [Bibliography.Radzikowska, Bibliography.Du],
        Range = "Unalloyed cast irons; poured silicon for castings, furnace silicon for the furnace. C and Si must be measured.",
        Doubt = "Phosphorus is weighted 0.27 to 1/3 in the literature; the form used is stored with each result.",
        Code = $"{nameof(CarbonEquivalent)}.{nameof(Of)}",
        Example = new("C 3.8, Si 2.1, P 0.05 → 4.52 (Du, printed)", () => Of(Analysis.Of((C, 3.8), (Si, 2.1), (P, 0.05)), Default), 4.52, 0.005),
    };

    /// <summary>Carbon equivalent by one form; an element that was not measured counts as 0.</summary>
    /// <param name="analysis">Mass percents; sensible where C and Si were measured.</param>
    /// <param name="form">The form.</param>
    /// <returns>Mass percent; 4.5167 for C 3.8, Si 2.1, P 0.05 by the default form.</returns>
    public static double Of(Analysis analysis, CarbonEquivalentForm form)
    {
        ArgumentNullException.ThrowIfNull(form);
        return form.Quantity.Value(analysis);
    }

    /// <summary>The form with an id, or null where there is none.</summary>
    public static CarbonEquivalentForm? Find(string id) => Forms.FirstOrDefault(f => f.Id == id);

    private static CarbonEquivalentForm Form(string id, string expression, Source source, params (Element Element, double Factor)[] terms) =>
        new(id, expression, source, terms.ToDictionary(t => t.Element, t => t.Factor));
}
