namespace MeltShop.Web.Texts;

/// <summary>A plan that was kept, opened again.</summary>
public sealed class KeptPlan;
