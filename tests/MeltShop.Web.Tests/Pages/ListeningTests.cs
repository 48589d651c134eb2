using System.Collections.Concurrent;
using System.Diagnostics;
using System.Reflection;
using System.Text.RegularExpressions;
using Bunit;
using MeltShop.Records.People;
using MeltShop.Records.Writing;
using MeltShop.Web.Components.Reading;
using MeltShop.Web.Pages.Charge;
using MeltShop.Web.Pages.Recalls;
using MeltShop.Web.Pages.Trail;
using Microsoft.AspNetCore.Components;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Diagnostics;
using Microsoft.Extensions.DependencyInjection;

namespace MeltShop.Web.Tests.Pages;

/// <summary>A page that shows what lies in a table hears when that table changes: nobody has to remember it.</summary>
public sealed partial class ListeningTests : DemoShopTest
{
    /// <summary>A page of one thing hears of that one and of what it is made of: of some row of the demo.</summary>
    private const int MostIds = 200;

    private readonly Said said;
    private readonly IDisposable listening;

    public ListeningTests() => listening = DiagnosticListener.AllListeners.Subscribe(said = new(DatabaseFile));

    /// <summary>All pages that show records; the trail is read as one state on purpose.</summary>
    public static TheoryData<string> Pages =>
        [.. typeof(Program).Assembly.GetTypes().Where(type => ViewOf(type) is not null && !type.IsAbstract && type != typeof(TrailList)).Select(type => type.FullName!).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Pages))]
    public void Page_Any_HearsOfEachTableThatItReads(string name)
    {
        SignIn([.. Role.All]);
        var page = typeof(Program).Assembly.GetType(name)!;
        Services.GetRequiredService<NavigationManager>().NavigateTo(page == typeof(RecallSheet) ? "/recall?from=Heat&of=OTF-2026-0001" : "/any?words=500-7");
        said.Statements.Clear();
        ComponentBase? drawn = null;
        Render(builder =>
        {
            builder.OpenComponent(0, page);
            foreach (var id in page.GetProperties().Where(p => p.GetCustomAttribute<ParameterAttribute>() is not null && p.PropertyType == typeof(long))) builder.AddAttribute(1, id.Name, 1L);
            builder.AddComponentReferenceCapture(2, it => drawn = (ComponentBase)it);
            builder.CloseComponent();
        }).WaitForAssertion(() => Assert.Contains(State(drawn!), new[] { "Ready", "Empty" }));

        var tables = said.Statements.SelectMany(text => Table().Matches(text)).Select(match => match.Groups[1].Value).Distinct().Order(StringComparer.Ordinal).ToList();
        Assert.NotEmpty(tables);
        Assert.Equal("", string.Join(", ", tables.Where(table => ChangedThings.KindOf(table) is { } kind && kind != ChangeKind.Site && !Enumerable.Range(1, MostIds).Any(id => Hears(drawn!, kind, id)))));
    }

    /// <summary>It would plan anew when it keeps its own plan, and what is being started would not be what was asked for.</summary>
    [Fact]
    public void Charge_OfAPlanThatIsKept_IsNotPlannedAnew() => Assert.False(Hears(new ChargePlanning(), ChangeKind.Plan));

    protected override void Dispose(bool disposing)
    {
        listening.Dispose();
        base.Dispose(disposing);
    }

    private static bool Hears(ComponentBase page, string kind, long id = 1) =>
        (bool)page.GetType().GetMethod("Concerns", BindingFlags.Instance | BindingFlags.NonPublic)!.Invoke(page, [new ChangeNotice(kind, id)])!;

    private static string State(ComponentBase page) => ViewOf(page.GetType())!.GetProperty("State", BindingFlags.Instance | BindingFlags.NonPublic)!.GetValue(page)!.ToString()!;

    private static Type? ViewOf(Type type) =>
        type.BaseType is { } under ? under.IsGenericType && under.GetGenericTypeDefinition() == typeof(PageBase<>) ? under : ViewOf(under) : null;

    [GeneratedRegex("(?:FROM|JOIN) \"(\\w+)\"")]
    private static partial Regex Table();

    /// <summary>Keeps the statements that go to one database file.</summary>
    private sealed class Said(string file) : IObserver<DiagnosticListener>, IObserver<KeyValuePair<string, object?>>
    {
        public ConcurrentQueue<string> Statements { get; } = [];

        public void OnNext(DiagnosticListener value)
        {
            if (value.Name == DbLoggerCategory.Name) value.Subscribe(this);
        }

        public void OnNext(KeyValuePair<string, object?> value)
        {
            if (value.Key == RelationalEventId.CommandExecuting.Name && value.Value is CommandEventData { Command: var command } && command.Connection!.ConnectionString.Contains(file, StringComparison.Ordinal)) Statements.Enqueue(command.CommandText);
        }

        public void OnCompleted()
        {
        }

        public void OnError(Exception error)
        {
        }
    }
}
