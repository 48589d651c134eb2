namespace MeltShop.Web.Texts;

public sealed class Ladles;
