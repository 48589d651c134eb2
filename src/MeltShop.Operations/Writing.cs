using MeltShop.Records;
using MeltShop.Records.Writing;

namespace MeltShop.Operations;

/// <summary>What an operation has in hand while it writes.</summary>
/// <param name="Db">The records, inside the transaction.</param>
/// <param name="Stamp">What every fact of this command carries.</param>
/// <param name="Acting">Who does it.</param>
public sealed record Writing(RecordsContext Db, Stamp Stamp, Acting Acting);
