namespace MeltShop.Metallurgy.Tests;

/// <summary>Marks a test whose expected values stand in a source outside this project: every one of its cases is an outside check.</summary>
/// <param name="source">Author, title, edition, year; "from memory" where nobody has held it against the source.</param>
[AttributeUsage(AttributeTargets.Method)]
internal sealed class PrintedAttribute(string source) : Attribute
{
    public string Source { get; } = source;
}
