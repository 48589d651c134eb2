namespace MeltShop.Web.Pages.Castings;

/// <summary>What a certificate says that no record holds.</summary>
public sealed record CertificateWords(string Buyer, string Order, string Castings);
