using MeltShop.Operations.Heats;
using MeltShop.Records.Reading.Heats;

namespace MeltShop.Operations.Correcting;

/// <summary>What a correction is reckoned from: what the records hold, and the bath as it is now.</summary>
/// <param name="Bath">By the last bath sample that counts and what was charged or tapped since.</param>
public sealed record CorrectionFacts(CorrectionPageView View, BathNow Bath);
