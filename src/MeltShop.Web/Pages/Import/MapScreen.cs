using MeltShop.Records.Reading.Importing;
using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Pages.Import;

/// <summary>What somebody who makes a map chooses from.</summary>
/// <param name="Instruments">Those in use.</param>
/// <param name="Kept">The map that is changed; null for a new one.</param>
public sealed record MapScreen(IReadOnlyList<Choice> Instruments, ImportMapView? Kept);
