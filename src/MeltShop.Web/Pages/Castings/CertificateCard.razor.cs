using MeltShop.Metallurgy;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Formulas;
using MeltShop.Metallurgy.Treatment;
using MeltShop.Operations;
using MeltShop.Operations.Castings;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Components.Reading;
using MeltShop.Web.Printing;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Castings;

/// <summary>The certificates of a ladle's castings: issued once, kept as they were issued, revised beside the former.</summary>
public sealed partial class CertificateCard
{
    private readonly EntryForm form = new();
    private readonly TextEntry buyer;
    private readonly TextEntry order;
    private readonly TextEntry castings;
    private readonly TextEntry reason;
    private readonly Drawn<string> issue;
    private string? issued;

    public CertificateCard()
    {
        (buyer, order, castings) = (form.Words("buyer", isRequired: true), form.Words("order", isRequired: true), form.Words("castings", isRequired: true));
        reason = form.Words("reason");
        issue = new(Issue);
    }

    [Parameter, EditorRequired]
    public CastingsContent View { get; set; } = null!;

    [Parameter, EditorRequired]
    public Acting Acting { get; set; } = null!;

    /// <summary>Whether the person may issue one.</summary>
    [Parameter]
    public bool IsOffered { get; set; }

    [Inject]
    private IssueCertificate Operation { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    [Inject]
    private ShopSite Shop { get; set; } = null!;

    /// <summary>Of what the last sample is judged by, on the certificate and in the words of a decision.</summary>
    private IReadOnlyList<Formula> Formulas =>
    [
        .. View.Verdicts.Any(verdict => verdict.Quantity == Element.Mg.Symbol) ? [MagnesiumFloor.Formula] : Array.Empty<Formula>(),
        .. QuantityFormulas.Of(View.Verdicts.Select(verdict => verdict.Quantity)),
    ];

    private async Task Issue(string seen)
    {
        if (form.IsBusy || seen == issued) return; // one press, made twice
        if (seen != View.Facts)
        {
            form.Find([new Finding("", Drawn<string>.Code)]);
            return;
        }

        if (form.IsAccepted) form.Open();
        var treated = View.Ladle.Treated!;
        var (number, revision) = ($"{View.Ladle.Heat.Number}/{treated.Ordinal}", View.Board.Certificates.Count + 1);
        var outcome = await HandingIn.Send(form, made => Operation.Run(made.By, new(
            made.Key, made.ObservedAt, treated.Id, treated.Version, number, revision, View.Board.TrailHead,
            new CertificateSheet(Text, LimitText, Shop).Draw(View, new(buyer.Text, order.Text, castings.Text), number, revision, made.ObservedAt, Acting.PersonName), reason.Value)));
        if (outcome?.Succeeded != true) return;
        issued = seen;
        reason.Showing(null);
    }
}
