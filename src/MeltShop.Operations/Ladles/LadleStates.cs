using MeltShop.Records.Ladles;

namespace MeltShop.Operations.Ladles;

internal static class LadleStates
{
    /// <summary>Brings a treated ladle into a state and keeps who did it, when and why; does nothing where it is in it already.</summary>
    public static void Step(this Writing writing, TreatedLadle ladle, TreatedLadleState state, string? reason = null)
    {
        if (ladle.State == state) return;
        ladle.State = state;
        writing.Db.Add(new LadleStep
        {
            EntryKey = writing.Stamp.EntryKey,
            PersonId = writing.Stamp.PersonId,
            ObservedAt = writing.Stamp.ObservedAt,
            EnteredAt = writing.Stamp.EnteredAt,
            Reason = reason,
            TreatedLadleId = ladle.Id,
            State = state,
        });
    }
}
