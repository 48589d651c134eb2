namespace MeltShop.Web.Api.Entries;

/// <summary>Something that was entered in a browser, perhaps a while ago.</summary>
/// <param name="Key">Made by the browser, once for each press.</param>
/// <param name="ObservedAt">When it was pressed, by the server's clock as the browser knew it.</param>
/// <param name="PersonId">Who pressed: nobody else's sign-in may hand it in.</param>
/// <param name="Operation">Name of the operation.</param>
/// <param name="About">What it belongs to: ids and versions.</param>
/// <param name="Fields">Texts by path, as typed.</param>
public sealed record EntryRequest(
    Guid Key, DateTimeOffset ObservedAt, long PersonId, string Operation, IReadOnlyDictionary<string, string> About, IReadOnlyDictionary<string, string> Fields);
