namespace MeltShop.Web.Components.Fields;

/// <summary>One line of a list to choose from.</summary>
/// <param name="Value">What the form gets.</param>
/// <param name="Words">What the person reads.</param>
public sealed record Choice(string Value, string Words);
