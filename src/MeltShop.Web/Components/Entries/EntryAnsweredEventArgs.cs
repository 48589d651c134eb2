using System.Text.Json;
using MeltShop.Metallurgy;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Components.Entries;

/// <summary>What the script of the entry path tells a form: the server's answer to what was pressed.</summary>
public sealed class EntryAnsweredEventArgs : EventArgs
{
    /// <summary>Empty where it was accepted.</summary>
    public IReadOnlyList<Answered> Findings { get; init; } = [];

    /// <summary>What was handed in, by field, where it was accepted while the form still waited and a script kept it (entry/next.js).</summary>
    public IReadOnlyDictionary<string, string>? Handed { get; init; }

    /// <summary>What was handed in, by field, where it was accepted and the form is free for the next entry by then; null where the form still waited.</summary>
    public IReadOnlyDictionary<string, string>? Late { get; init; }

    /// <summary>Of a late answer: the next entry was begun meanwhile.</summary>
    public bool IsTouched { get; init; }

    /// <summary>A finding as it travels.</summary>
    public sealed record Answered(string Path, string Code, IReadOnlyList<JsonElement> Arguments)
    {
        internal Finding Finding => new(Path, Code, [.. Arguments.Select(Value)]);

        private static object Value(JsonElement argument) => argument.ValueKind switch
        {
            JsonValueKind.Number => argument.GetDouble(),
            JsonValueKind.String when IsInstant(argument, out var instant) => instant, // told in the zone of the site, and not as it travels
            JsonValueKind.String => argument.GetString()!,
            _ => argument.ToString(),
        };

        /// <summary>A day alone may be the name of something.</summary>
        private static bool IsInstant(JsonElement argument, out DateTimeOffset instant) =>
            argument.TryGetDateTimeOffset(out instant) && argument.GetString()!.Contains('T', StringComparison.Ordinal);
    }
}

/// <summary>What the script of the entry path tells a form when somebody begins to type in it.</summary>
public sealed class EntryBegunEventArgs : EventArgs
{
    /// <summary>What stood in it, by field; empty where that was about to change by a press or a choice before.</summary>
    public IReadOnlyDictionary<string, string> Fields { get; init; } = new Dictionary<string, string>();
}

/// <summary>The events that the script raises.</summary>
[EventHandler("onentryanswered", typeof(EntryAnsweredEventArgs), enableStopPropagation: true, enablePreventDefault: true)]
[EventHandler("onentrybegun", typeof(EntryBegunEventArgs), enableStopPropagation: true, enablePreventDefault: true)]
public static class EventHandlers;
