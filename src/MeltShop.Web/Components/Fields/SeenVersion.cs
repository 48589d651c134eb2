namespace MeltShop.Web.Components.Fields;

/// <summary>
/// The version that the person at a form has seen. After a refusal because somebody else was faster, the next version that
/// arrives on the page is the one they see; later changes are told again.
/// </summary>
public sealed class SeenVersion
{
    private bool isOutdated;

    public Guid Value { get; private set; }

    /// <summary>The form opens over this version.</summary>
    public void Open(Guid version) => (Value, isOutdated) = (version, false);

    /// <summary>The server said that somebody else was faster.</summary>
    public void Outdated() => isOutdated = true;

    /// <summary>The page shows this version now.</summary>
    public void Arrived(Guid version)
    {
        if (isOutdated && version != Value) Open(version);
    }
}
