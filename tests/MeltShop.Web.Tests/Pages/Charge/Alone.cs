namespace MeltShop.Web.Tests.Pages.Charge;

/// <summary>Tests that say how workers are started, for the whole process: no other test runs at the same time.</summary>
[CollectionDefinition(nameof(Alone), DisableParallelization = true)]
public static class Alone;
