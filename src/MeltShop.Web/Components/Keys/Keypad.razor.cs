using System.Globalization;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Components.Keys;

/// <summary>
/// Keys for a glove: a plain text field, the only kind that takes a decimal sign and "&lt;" everywhere, opens a keyboard of letters on a
/// tablet. Drawn once; a script does the rest, so no key waits for the server.
/// </summary>
public sealed partial class Keypad
{
    /// <summary>Lies on the page of parts to be looked at, and types into nothing.</summary>
    [Parameter]
    public bool IsSample { get; set; }

    /// <summary>Figures, the sign of the person's language, and the minus, which only a field that goes below zero shows.</summary>
    private static IEnumerable<string> Signs => ["1", "2", "3", "4", "5", "6", "7", "8", "9", "0", NumberFormatInfo.CurrentInfo.NumberDecimalSeparator, "-"];
}
