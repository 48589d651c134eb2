using MeltShop.Records.People;
using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Pages.Parts;

/// <summary>The house components in all their states, side by side; in development only.</summary>
public sealed partial class PartsPage
{
    private static readonly IReadOnlyList<string> Roles = [Role.Metallurgist, Role.Supervisor];

    private readonly EntryForm form = new();
    private readonly EntryForm refused = new();
    private readonly QuantityEntry quantity;
    private readonly QuantityEntry empty;
    private readonly QuantityEntry asked;
    private readonly QuantityEntry wrong;
    private readonly QuantityEntry signed;
    private readonly QuantityEntry below;
    private readonly QuantityEntry needed;
    private readonly QuantityEntry large;
    private readonly TextEntry words;
    private readonly TextEntry choice;
    private readonly TextEntry longChoice;

    public PartsPage()
    {
        quantity = form.Mass("quantity", 0, 60000).Showing(1250.5);
        empty = form.Mass("empty", 0, 60000);
        asked = form.Mass("asked", 0, 60000);
        wrong = form.Mass("wrong", 0, 60000);
        signed = form.Quantity("signed", -5, 5, allowsBelow: true);
        below = form.Quantity("below", -5, 5, allowsBelow: true);
        needed = form.Mass("needed", 0, 60000, isRequired: true);
        large = form.Mass("large", 0, 60000);
        words = form.Words("words");
        choice = form.Choice("choice");
        longChoice = form.Choice("longChoice");
        (asked.Text, wrong.Text, below.Text, large.Text) = ("1,250", "much", "<0.003", "600000");
        form.Find([new("needed", "number.missing")]);
        refused.Fail();
    }

    private IEnumerable<Choice> Choices => [new("1", Text["First"]), new("2", Text["Second"])];

    private IEnumerable<Choice> LongChoices => Enumerable.Range(0, 70).Select(n => new Choice($"{n}", $"{Text["First"]} {n}"));
}
