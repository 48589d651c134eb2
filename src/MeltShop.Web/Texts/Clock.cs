namespace MeltShop.Web.Texts;

/// <summary>Names the texts of the clock: <c>Clock.resx</c>.</summary>
public sealed class Clock;
