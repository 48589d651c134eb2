namespace MeltShop.Web.Tests.Pages;

/// <summary>Goes with the time until a test sets it; then it stands.</summary>
public sealed class SetClock : TimeProvider
{
    public DateTimeOffset? At { get; set; }

    public override DateTimeOffset GetUtcNow() => At ?? base.GetUtcNow();
}
