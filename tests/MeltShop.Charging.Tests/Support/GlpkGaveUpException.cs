namespace MeltShop.Charging.Tests.Support;

/// <summary>GLPK could not solve a program for reasons of its own, such as planes that lie almost parallel: there is no second opinion on it.</summary>
internal sealed class GlpkGaveUpException(string log) : InvalidOperationException(log);
