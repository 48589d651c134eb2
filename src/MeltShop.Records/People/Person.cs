using Microsoft.AspNetCore.Identity;

namespace MeltShop.Records.People;

/// <summary>Somebody who works with the records; facts name them for ever, so a person is deactivated and never deleted.</summary>
public sealed class Person : IdentityUser<long>
{
    public required string DisplayName { get; set; }

    /// <summary>Language and decimal sign, for example <c>en-GB</c>; units are the shop's.</summary>
    public string Culture { get; set; } = "en-GB";

    public bool IsActive { get; set; } = true;

    /// <summary>Made by the demo; the pages say so.</summary>
    public bool IsDemo { get; init; }
}
