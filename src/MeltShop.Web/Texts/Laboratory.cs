namespace MeltShop.Web.Texts;

public sealed class Laboratory;
