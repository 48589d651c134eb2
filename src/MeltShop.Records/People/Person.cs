using Microsoft.AspNetCore.Identity;

namespace MeltShop.Records.People;

/// <summary>Somebody who works with the records; facts name them for ever, so a person is deactivated and never deleted.</summary>
public sealed class Person : IdentityUser<long>
{
    public required string DisplayName { get; set; }

    /// <summary>Language and decimal sign, for example <c>en-GB</c>; units are the shop's.</summary>
    public string Culture { get; set; } = "en-GB";

    /// <summary>Hash of the digits with which they take over at a station where somebody is signed in; null until they choose some.</summary>
    public string? PinHash { get; set; }

    public bool IsActive { get; set; } = true;

    /// <summary>Made by the demo; the pages say so.</summary>
    public bool IsDemo { get; init; }
}
