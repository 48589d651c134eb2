using System.Text.Json;
using MeltShop.Metallurgy;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Components.Entries;

/// <summary>What the script of the entry path tells a form: the server's answer to what was pressed.</summary>
public sealed class EntryAnsweredEventArgs : EventArgs
{
    /// <summary>Empty where it was accepted.</summary>
    public IReadOnlyList<Answered> Findings { get; init; } = [];

    /// <summary>A finding as it travels.</summary>
    public sealed record Answered(string Path, string Code, IReadOnlyList<JsonElement> Arguments)
    {
        internal Finding Finding => new(Path, Code, [.. Arguments.Select(Value)]);

        private static object Value(JsonElement argument) =>
            argument.ValueKind == JsonValueKind.Number ? argument.GetDouble() : argument.ValueKind == JsonValueKind.String ? argument.GetString()! : argument.ToString();
    }
}

/// <summary>The event that the script raises.</summary>
[EventHandler("onentryanswered", typeof(EntryAnsweredEventArgs), enableStopPropagation: true, enablePreventDefault: true)]
public static class EventHandlers;
