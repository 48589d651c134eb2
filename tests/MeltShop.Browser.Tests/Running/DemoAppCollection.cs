namespace MeltShop.Browser.Tests.Running;

/// <summary>Tests that only read the demo, or change what no other of them looks at, share one program.</summary>
[CollectionDefinition]
public sealed class DemoAppCollection : ICollectionFixture<RunningApp>;
