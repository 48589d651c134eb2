namespace MeltShop.Web.Demo;

/// <summary>Where a value comes from.</summary>
/// <param name="Text">Author, title, edition and year as far as they are known, or "from memory".</param>
/// <param name="Kind">How much weight it bears.</param>
public sealed record DemoSource(string Text, DemoSourceKind Kind);

/// <summary>How much weight a source bears.</summary>
public enum DemoSourceKind
{
    /// <summary>A standard or a published specification.</summary>
    Standard,

    /// <summary>A supplier's or merchant's printed typical values or ranges.</summary>
    SupplierTypical,

    /// <summary>A range in the technical literature.</summary>
    PublishedRange,

    /// <summary>From memory: to be checked before it is relied on.</summary>
    Memory,

    /// <summary>Invented for the demo.</summary>
    Demo,
}
