namespace MeltShop.Records.Ladles;

/// <summary>An entry at a ladle that can be taken back: the fact that supersedes it repeats it and says that it was none.</summary>
public interface IWithdrawable
{
    /// <summary>True for the fact that takes another one back.</summary>
    bool IsWithdrawn { get; }
}
