namespace MeltShop.Web.Texts;

/// <summary>Names the texts of the orders: <c>Orders.resx</c>.</summary>
public sealed class Orders;
