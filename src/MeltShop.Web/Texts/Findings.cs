namespace MeltShop.Web.Texts;

/// <summary>Names the texts of findings, one text a code: <c>Findings.resx</c>.</summary>
public sealed class Findings;
