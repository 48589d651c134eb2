using MeltShop.Operations.Importing.Rows;
using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;

namespace MeltShop.Operations.Importing.Subjects;

/// <summary>Finds heat and ladle of a sample, by the rules by which a person may enter one there.</summary>
internal sealed class SubjectFinder(NamedThings named, long instrumentId)
{
    /// <summary>What the sample names, or why it cannot be of that.</summary>
    public (FoundSample? Found, string? Code, object[] Arguments) Find(ImportSample sample)
    {
        var subject = sample.Subject;
        if (subject.Reference is { } reference) return OfACheck(sample, reference);
        long? furnaceId = null;
        if (subject.Furnace is { } furnace)
        {
            if (!named.Furnaces.TryGetValue(furnace, out var known)) return Refused("importFurnace.unknown", furnace);
            furnaceId = known;
        }

        if (subject.Ladle is { } ladle && !named.Ladles.ContainsKey(ladle)) return Refused("ladle.unknown", ladle);
        if (NeedsLadle(subject.Kind) && subject.Ladle is null) return Refused("sample.ladleMissing");
        if (SampleKinds.OfTheBath.Contains(subject.Kind) && subject.Ladle is not null) return Refused("sample.notOfLadle");
        return subject.Heat is { } number ? ByNumber(sample, number, furnaceId) : ByFurnace(sample, furnaceId!.Value);
    }

    private (FoundSample?, string?, object[]) OfACheck(ImportSample sample, string reference)
    {
        if (!named.References.TryGetValue(reference, out var id)) return Refused("reference.unknown", reference);
        var identity = sample.Subject.Number is { } number
            ? FormattableString.Invariant($"{instrumentId}|#{number}")
            : FormattableString.Invariant($"{instrumentId}|check|{id}|{sample.TakenAt.UtcTicks}");
        return (new(sample, 0, null, identity) { ReferenceId = id }, null, []);
    }

    private (FoundSample?, string?, object[]) ByNumber(ImportSample sample, string number, long? furnaceId)
    {
        if (!named.ByNumber.TryGetValue(number, out var heat)) return Refused("heat.unknown", number);
        if (furnaceId is { } furnace && furnace != heat.FurnaceId) return Refused("importFurnace.other");
        var late = SampleKinds.OfTheBath.Contains(sample.Subject.Kind) && heat.ClosedAt < sample.TakenAt;
        if (heat.State == HeatState.Cancelled || late) return Refused("state.wrong", heat.State.ToString());
        if (sample.TakenAt < heat.StartedAt) return Refused("importHeat.early");
        return OfHeats(sample, [heat]);
    }

    /// <summary>The heat that was in the furnace then. A ladle may be poured when its heat is closed already: there, the ladle's tap says which it was, or of its base iron the pocket that was laid.</summary>
    private (FoundSample?, string?, object[]) ByFurnace(ImportSample sample, long furnaceId)
    {
        var heats = named.ByFurnace[furnaceId].Where(h => h.State != HeatState.Cancelled && h.StartedAt <= sample.TakenAt);
        if (sample.Subject.Ladle is null) heats = heats.Where(h => h.WasInFurnace(sample.TakenAt));
        var found = heats.ToList();
        return found.Count == 0 ? Refused("importHeat.noneThen") : OfHeats(sample, found);
    }

    private (FoundSample?, string?, object[]) OfHeats(ImportSample sample, List<NamedHeat> heats)
    {
        if (sample.Subject.Ladle is not { } code)
        {
            var heat = heats.MaxBy(h => h.StartedAt)!;
            return (new(sample, heat.Id, null, Identity(sample, heat.Id, null)), null, []);
        }

        var fillings = sample.Subject.Kind == SampleKind.LadleBase ? named.Laid : named.Tapped;
        var filling = heats.SelectMany(h => fillings[h.Id]).Where(f => f.LadleId == named.Ladles[code] && f.At <= sample.TakenAt).MaxBy(f => f.At);
        return filling is null ? Refused("importLadle.noneThen") : (new(sample, filling.HeatId, filling.Id, Identity(sample, filling.HeatId, filling.Id)), null, []);
    }

    private string Identity(ImportSample sample, long heatId, long? ladleId) => sample.Subject.Number is { } number
        ? FormattableString.Invariant($"{instrumentId}|#{number}")
        : FormattableString.Invariant($"{instrumentId}|{heatId}|{ladleId}|{sample.Subject.Kind}|{sample.TakenAt.UtcTicks}|{sample.Subject.Coin}");

    private static bool NeedsLadle(SampleKind kind) => kind is SampleKind.AfterTreatment or SampleKind.LastMetal;

    private static (FoundSample?, string?, object[]) Refused(string code, params object[] arguments) => (null, code, arguments);
}
