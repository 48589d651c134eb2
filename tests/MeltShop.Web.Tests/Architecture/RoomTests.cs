using System.Reflection;
using MeltShop.Charging;
using MeltShop.Metallurgy.Elements;
using MeltShop.Operations;
using MeltShop.Records;

namespace MeltShop.Web.Tests.Architecture;

/// <summary>The arrows between the rooms: Web → Operations → {Records, Charging} → Metallurgy, and what each may take from outside.</summary>
public class RoomTests
{
    private static readonly Assembly Metallurgy = typeof(Element).Assembly;
    private static readonly Assembly Charging = typeof(ChargeOptimiser).Assembly;
    private static readonly Assembly Records = typeof(RecordsContext).Assembly;
    private static readonly Assembly Operations = typeof(OperationsServices).Assembly;
    private static readonly Assembly Web = typeof(Program).Assembly;

    private static readonly Assembly[] Rooms = [Metallurgy, Charging, Records, Operations, Web];

    [Fact]
    public void Metallurgy_KnowsNoOtherRoomAndNothingButTheFrameworkAndNumerics() =>
        Assert.DoesNotContain(Names(Metallurgy), name => !IsFramework(name) && name != "MathNet.Numerics");

    [Fact]
    public void Charging_KnowsMetallurgyAlone() => Assert.Equal(["MeltShop.Metallurgy"], RoomsKnownBy(Charging));

    [Fact]
    public void Records_KnowsMetallurgyAlone() => Assert.Equal(["MeltShop.Metallurgy"], RoomsKnownBy(Records));

    [Fact]
    public void Operations_DoesNotKnowTheWeb() => Assert.DoesNotContain("MeltShop.Web", RoomsKnownBy(Operations));

    [Fact]
    public void Operations_NeverSeesTheRequest() =>
        Assert.DoesNotContain(Names(Operations), name => name.StartsWith("Microsoft.AspNetCore.Http", StringComparison.Ordinal));

    [Theory]
    [InlineData("Google.OrTools", "MeltShop.Charging")]
    [InlineData("MudBlazor", "MeltShop.Web")]
    [InlineData("Npgsql.EntityFrameworkCore.PostgreSQL", "MeltShop.Records")]
    [InlineData("Microsoft.EntityFrameworkCore.Sqlite", "MeltShop.Records")]
    public void Package_OfOneRoom_IsKnownThereOnly(string package, string room) =>
        Assert.Equal([room], Rooms.Where(r => Names(r).Contains(package)).Select(r => r.GetName().Name));

    [Fact]
    public void Solver_InNoSignatureThatAnotherRoomCanSee()
    {
        var seen = from type in Charging.GetExportedTypes()
                   from used in Signature.Of(type)
                   where used.Assembly.GetName().Name!.StartsWith("Google.", StringComparison.Ordinal)
                   select $"{type.FullName}: {used.FullName}";

        Assert.Empty(seen);
    }

    [Fact]
    public void Signature_OfATypeThatShowsAnother_HoldsIt()
    {
        // The check above would also pass if it looked at nothing.
        Assert.Contains(typeof(Analysis), Signature.Of(typeof(Charging.Plans.ChargePlan)));
        Assert.Contains(typeof(CancellationToken), Signature.Of(typeof(ChargeOptimiser)));
    }

    private static List<string> Names(Assembly assembly) => [.. assembly.GetReferencedAssemblies().Select(reference => reference.Name!)];

    private static IEnumerable<string> RoomsKnownBy(Assembly assembly) =>
        Names(assembly).Where(name => name.StartsWith("MeltShop.", StringComparison.Ordinal));

    private static bool IsFramework(string name) => name.StartsWith("System.", StringComparison.Ordinal) || name is "netstandard" or "mscorlib";
}
