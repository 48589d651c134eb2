using System.Globalization;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Grades;
using MeltShop.Metallurgy.Route;
using MeltShop.Operations.Castings;
using MeltShop.Operations.Laboratory;
using MeltShop.Operations.Ladles;
using MeltShop.Records.Reading.Laboratory;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Components.Limits;
using MeltShop.Web.Components.Reading;
using MeltShop.Web.Pages.Castings;
using MeltShop.Web.Pages.Charge;
using MeltShop.Web.Pages.Heats;
using Microsoft.Extensions.Localization;

namespace MeltShop.Web.Printing;

/// <summary>
/// The certificate of a ladle's castings in the sense of EN 10204, 3.1: a draft until an inspector who is not production has signed it.
/// </summary>
internal sealed class CertificateSheet(IStringLocalizer<Texts.Castings> text, IStringLocalizer<Texts.Limits> names, ShopSite site)
{
    /// <summary>The document as bytes.</summary>
    /// <param name="content">What is known of the castings.</param>
    /// <param name="about">What only the inspector knows: buyer, order, castings.</param>
    /// <param name="number">Number of the certificate.</param>
    /// <param name="revision">From 1.</param>
    /// <param name="issuedAt">When it is issued.</param>
    /// <param name="inspector">Who will sign.</param>
    public byte[] Draw(CastingsContent content, CertificateWords about, string number, int revision, DateTimeOffset issuedAt, string inspector)
    {
        using var sheet = new Sheet(text["CertificateNumber", number, revision]);
        sheet.Title(text["CertificateTitle"]);
        sheet.Words(text["CertificateKind"]);
        Head(sheet, content, about, number, revision, issuedAt);
        Analysis(sheet, content);
        foreach (var tested in content.ReleasedPieces) Piece(sheet, tested);
        if (content.ReleasedPieces.Count == 0) sheet.Words(text["NoPieces"]);
        Decision(sheet, content);
        sheet.Heading(text["Proof"]);
        sheet.Words(text["ProofWords", content.Board.TrailHead]);
        sheet.Signature(text["Signature", inspector]);
        return sheet.End((page, pages) => text["Foot", number, revision, page, pages]);
    }

    private void Head(Sheet sheet, CastingsContent content, CertificateWords about, string number, int revision, DateTimeOffset issuedAt)
    {
        var ladle = content.Ladle.Treated!;
        sheet.Fact(text["Number"], text["NumberWords", number, revision]);
        if (content.Board.Certificates is [.., var last]) sheet.Fact(text["Replaces"], text["ReplacesWords", last.Revision, last.Sha256]);
        sheet.Fact(text["IssuedAt"], site.DayAndTime(issuedAt));
        sheet.Fact(text["Maker"], content.SiteName);
        sheet.Fact(text["Buyer"], about.Buyer);
        sheet.Fact(text["Order"], about.Order);
        sheet.Fact(text["CastingsOf"], about.Castings);
        sheet.Fact(text["GradeOf"], content.Asked is { } asked ? text["GradeWords", asked.Code, asked.Standard, asked.Edition] : content.Board.GradeCode);
        sheet.Fact(text["HeatOf"], text["HeatWords", content.Ladle.Heat.Number, ladle.Ordinal]);
        var moulds = content.Released.ToList();
        if (moulds.Count > 0) sheet.Fact(text["Moulds"], string.Join(", ", moulds.Select(m => m.LateFor is null ? m.Label : text["LateMould", m.Label].Value)));
        foreach (var unit in content.Kept) sheet.Fact(text["NotOfThis"], text["UnitMouldsWords", unit.Name, unit.Moulds.Count == 0 ? "–" : string.Join(", ", unit.Moulds)]);
    }

    private void Analysis(Sheet sheet, CastingsContent content)
    {
        sheet.Heading(text["Analysis"]);
        if (content.LastMetal is not { } sample)
        {
            sheet.Words(text["NoSample"]);
            return;
        }

        sheet.Words(text["SampleWords", sample.Id, sample.CoinNumber ?? "–", site.DayAndTime(sample.Origin.ObservedAt), sample.Burns.Count, sample.Burns.Count(b => b.SetAside)]);
        sheet.Table(
            [0.2, 0.2, 0.2, 0.2, 0.2], [text["Element"], text["Measured"], text["Least"], text["Most"], text["Verdict"]],
            content.Verdicts.Select(v => (IReadOnlyList<string>)
                [Name(v.Quantity), Result(sample, v), Limit(v.Quantity, v.Least), Limit(v.Quantity, v.Most), text["Window." + v.Standing]]));
        var judged = content.Verdicts.Select(v => v.Quantity).ToHashSet();
        var rest = sample.Means.Where(m => !judged.Contains(m.Element.Symbol)).Select(m => $"{m.Element.Symbol} {BurnTable.BelowMark(sample, m.Element)}{PercentText.Show(m.Element, m.Percent)}").ToList();
        if (rest.Count > 0) sheet.Words(text["AlsoMeasured", string.Join(", ", rest)]);
        if (content.Ladle.Treated!.Card?.Problem is not null) sheet.Words(text["CarbonThroughChain"]);
    }

    private void Piece(Sheet sheet, TestedPiece tested)
    {
        sheet.Heading(text["Piece", tested.Piece.Label]);
        sheet.Words(text["PieceWords", text["Shape." + tested.Piece.Shape].Value, NumberText.Show(tested.Piece.WallMm, 0), tested.Piece.TestUnit]);
        var methods = tested.Results.ToDictionary(r => r.Property, r => r.Method);
        sheet.Table(
            [0.3, 0.12, 0.12, 0.12, 0.16, 0.18],
            [text["Property"], text["Value"], text["Least"], text["Most"], text["Verdict"], text["Method"]],
            tested.Verdicts.Select(v => (IReadOnlyList<string>)
            [
                text["Property." + v.Property], PropertyText.Show(v.Property, v.Value), PropertyText.Show(v.Property, v.Least), PropertyText.Show(v.Property, v.Most),
                Verdict(v), methods.GetValueOrDefault(v.Property) ?? "",
            ]));
        if (tested.Verdicts.Any(v => v.IsRemembered)) sheet.Words(text["FromMemoryWords"]);
        if (tested.Verdicts.Any(v => v.Standing == PropertyStanding.NotTested)) sheet.Words(text["NotAllTested"]);
    }

    private void Decision(Sheet sheet, CastingsContent content)
    {
        var ladle = content.Ladle.Treated!;
        foreach (var unit in ladle.Apart.Where(d => d.Verdict == Records.Ladles.CastingVerdict.Release))
        {
            sheet.Heading(text["Unit", unit.TestUnit!]);
            sheet.Words(text["ReleaseWords", unit.Origin.Person, site.DayAndTime(unit.Origin.ObservedAt), unit.SampleId?.ToString(CultureInfo.InvariantCulture) ?? "–", unit.Origin.Reason ?? ""]);
        }

        if (ladle.State != Records.Ladles.TreatedLadleState.Released || ladle.Decision is not { } decision) return;
        sheet.Heading(text["Release"]);
        sheet.Words(text["ReleaseWords", decision.Origin.Person, site.DayAndTime(decision.Origin.ObservedAt), decision.SampleId?.ToString(CultureInfo.InvariantCulture) ?? "–", decision.Origin.Reason ?? ""]);
        if (decision.GradeCode is { } code) sheet.Words(text["CertificateDowngrade", content.Ladle.Grade.Code, code, decision.ReMarking ?? "", decision.Consent ?? ""]);
        if (SeenCastings.Of(decision.Seen) is { } seen) sheet.Words(text["SeenWords", SeenText.Words(text, names, seen)]);
    }

    private string Verdict(PropertyVerdict verdict) =>
        verdict.IsRemembered ? $"{text["Standing." + verdict.Standing]}, {text["FromMemory"]}" : text["Standing." + verdict.Standing];

    // As many decimals as it takes not to contradict the verdict beside it.
    private static string Result(SampleView sample, WindowVerdict verdict) =>
        verdict.Value is { } value ? Mark(sample, verdict.Quantity) + NumberText.ShowBeside(value, QuantityText.Decimals(verdict.Quantity), verdict.Least, verdict.Most) : "–";

    // In the units of the standards, whatever the shop weighs in; the table says percent.
    private string Name(string quantity) => WindowQuantity.Find(quantity)?.Unit is { } unit and not ("%" or "1") ? $"{QuantityText.Name(names, quantity)}, {unit}" : QuantityText.Name(names, quantity);

    // Carbon comes from the furnace sample, whatever the coin showed.
    private static string Mark(SampleView sample, string quantity) =>
        Element.TryParse(quantity, out var element) && element != Element.C ? BurnTable.BelowMark(sample, element) : "";

    private static string Limit(string quantity, double? value) => value is { } percent ? NumberText.ShowAtLeast(percent, QuantityText.Decimals(quantity)) : "–";
}
