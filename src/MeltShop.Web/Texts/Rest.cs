namespace MeltShop.Web.Texts;

/// <summary>The rest of a charge, planned anew from what was weighed in.</summary>
public sealed class Rest;
