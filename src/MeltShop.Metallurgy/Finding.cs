namespace MeltShop.Metallurgy;

/// <summary>
/// What is wrong with an input or a request: an answer, not an exception. The page maps <see cref="Path"/> to a field and
/// <see cref="Code"/> to a text; the API lists it under <c>errors</c>.
/// </summary>
/// <param name="Path">Where, as the caller wrote it: <c>materials[3].analysis.C</c>.</param>
/// <param name="Code">What, as a key of the texts: <c>mass.negative</c>.</param>
/// <param name="Arguments">The values that the text names, in its order.</param>
public sealed record Finding(string Path, string Code, params IReadOnlyList<object> Arguments)
{
    /// <inheritdoc/>
    public override string ToString() => Arguments.Count == 0 ? $"{Path}: {Code}" : $"{Path}: {Code} ({string.Join(", ", Arguments)})";
}
