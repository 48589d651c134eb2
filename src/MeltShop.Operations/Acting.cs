namespace MeltShop.Operations;

/// <summary>Who does something, where, and what they may: taken from one service, never from the HTTP context.</summary>
/// <param name="PersonId">The person.</param>
/// <param name="PersonName">As it is shown beside what they did.</param>
/// <param name="Station">The station or device, for example <c>Lab tablet</c>.</param>
/// <param name="Roles">The roles that they hold, see <see cref="MeltShop.Records.People.Role"/>.</param>
public sealed record Acting(long PersonId, string PersonName, string Station, IReadOnlyCollection<string> Roles)
{
    /// <summary>Holds one of the roles.</summary>
    public bool HoldsAny(IEnumerable<string> roles) => roles.Any(Roles.Contains);
}
