using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Pages.Import;

/// <summary>What somebody who makes a map chooses from.</summary>
/// <param name="Instruments">Those in use.</param>
public sealed record MapScreen(IReadOnlyList<Choice> Instruments);
