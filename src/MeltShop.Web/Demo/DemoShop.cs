namespace MeltShop.Web.Demo;

/// <summary>The demo foundry itself; its name and place are invented.</summary>
/// <param name="Code">Short code, the first part of every heat number.</param>
/// <param name="Name">Name.</param>
/// <param name="TimeZone">IANA zone that decides day and shift.</param>
/// <param name="Currency">ISO 4217 code of the shop's one currency.</param>
public sealed record DemoSite(string Code, string Name, string TimeZone, string Currency);

/// <summary>An invented person.</summary>
/// <param name="UserName">Sign-in name.</param>
/// <param name="Name">Name shown.</param>
/// <param name="Role">melter, metallurgist, supervisor, inspector or administrator.</param>
public sealed record DemoPerson(string UserName, string Name, string Role);

/// <summary>A furnace.</summary>
/// <param name="Code">Unique.</param>
/// <param name="Name">Name shown.</param>
/// <param name="Kind">What kind of furnace, with its lining.</param>
/// <param name="CapacityKg">Liquid iron when full, kg.</param>
/// <param name="UsualHeelKg">What is usually left in it, kg.</param>
/// <param name="PowerKw">Rated power, kW.</param>
/// <param name="HighestC">Highest bath temperature that the lining is said to stand, °C.</param>
/// <param name="Source">Where the figures come from.</param>
public sealed record DemoFurnace(string Code, string Name, string Kind, double CapacityKg, double UsualHeelKg, double PowerKw, double HighestC, DemoSource Source);
