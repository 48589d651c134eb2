namespace MeltShop.Web.Texts;

/// <summary>Names the texts of the correction of a bath: <c>Correction.resx</c>.</summary>
public sealed class Correction;
