using MeltShop.Metallurgy;
using MeltShop.Operations;
using MeltShop.Operations.Drafts;
using MeltShop.Web.Components.Entries;
using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Api.Entries;

/// <summary>Where entries arrive, by the endpoint or from a form whose page has no script.</summary>
public sealed class EntryDesk(IServiceProvider services, KeepDraft drafts, TimeProvider clock, ILogger<EntryDesk> log)
{
    /// <summary>The name under which a draft travels: it is no operation.</summary>
    public const string Draft = nameof(KeepDraft);

    /// <summary>Whether a person may hand such an entry in; its operation checks again.</summary>
    public bool May(Acting by, TypedEntry entry)
    {
        ArgumentNullException.ThrowIfNull(by);
        ArgumentNullException.ThrowIfNull(entry);
        return by.HoldsAny(EntryKinds.Roles(entry.Operation, services));
    }

    /// <summary>Takes what a browser sent.</summary>
    /// <exception cref="BadHttpRequestException">It is not what this program sends.</exception>
    public async Task<EntryAnswer> Take(Acting by, EntryRequest request, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(by);
        ArgumentNullException.ThrowIfNull(request);
        if (request.Operation == Draft) return new((await drafts.Run(by, Typed(request), cancellation)).Findings);
        var entry = EntryKinds.Make(request.Operation);
        foreach (var (name, value) in request.About) entry.Belongs(name, value);
        entry.Fill(request.Fields);
        return await entry.HandIn(services, new EntryMade(by, request.Key, request.ObservedAt));
    }

    /// <summary>Takes what stands in a form. A failure of the program is an answer, and the next press is the same entry.</summary>
    public async Task<EntryAnswer> Take(Acting by, TypedEntry entry)
    {
        ArgumentNullException.ThrowIfNull(entry);
        var texts = entry.Form.Fields.Where(field => field.Text.Length > 0).GroupBy(field => field.Path).ToDictionary(field => field.Key, field => field.Last().Text);
        try
        {
            return await Take(by, new(entry.Form.Key, clock.GetUtcNow(), by.PersonId, entry.Operation, entry.Sent, texts), CancellationToken.None);
        }
#pragma warning disable CA1031 // whatever kept it from being saved: the form says so and keeps what was typed
        catch (Exception fault)
#pragma warning restore CA1031
        {
            log.LogError(fault, "An entry could not be saved");
            return new([new Finding("", "program.failed")]);
        }
    }

    private static KeepDraft.Typed Typed(EntryRequest request) => new(
        request.About.GetValueOrDefault("subject") ?? "",
        request.About.GetValueOrDefault("field") ?? "",
        request.Fields.GetValueOrDefault("text") ?? "",
        Guid.TryParse(request.About.GetValueOrDefault("seen"), out var seen) ? seen : null);
}
