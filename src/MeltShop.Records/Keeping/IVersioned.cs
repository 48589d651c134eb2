namespace MeltShop.Records.Keeping;

/// <summary>A current state that people edit: two editors are told apart by the version that each of them saw.</summary>
public interface IVersioned
{
    /// <summary>Set anew by the context at every change; a concurrency token on both databases.</summary>
    Guid Version { get; set; }
}
