namespace MeltShop.Metallurgy.Statistics;

/// <summary>A burn that does not fit the others. It is marked, never removed: a person sets it aside.</summary>
/// <param name="Burn">Its place among the burns, from 0.</param>
/// <param name="Test">The test that found it.</param>
/// <param name="LevelPercent">5: suspect; 1: outlying.</param>
public sealed record SuspectBurn(int Burn, BurnTest Test, int LevelPercent);
