using Bunit;
using MeltShop.Metallurgy;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Components.Grid;

namespace MeltShop.Web.Tests.Components.Grid;

public sealed class ChemistryGridTests : ComponentTest
{
    private readonly EntryForm form = new();
    private readonly Dictionary<(int Row, string Symbol), QuantityEntry> cells = [];
    private Finding? ofTheSecondRow;

    [Fact]
    public void Drawn_Empty_IsOneStopOfTheTabKeyAndNamesEveryCell()
    {
        var grid = Draw();
        var inputs = grid.FindAll("input");

        Assert.Equal(6, inputs.Count);
        Assert.Equal(["0.C"], inputs.Where(input => input.GetAttribute("tabindex") == "0").Select(input => input.GetAttribute("data-cell")));
        Assert.Equal("Burn 2, Si", inputs[4].GetAttribute("aria-label"));
        Assert.All(inputs, input => Assert.Equal("text", input.GetAttribute("type")));
        Assert.Equal("grid", grid.Find("table").GetAttribute("role"));
    }

    [Fact]
    public void Typed_Cell_KeepsItsTextAndHearsNoKey()
    {
        var grid = Draw();
        var cell = grid.Find("[data-cell='1.Si']");
        cell.Change("<0,003");

        Assert.Equal((0.003, true), (cells[(1, "Si")].Value, cells[(1, "Si")].Reading.IsBelow));
        Assert.Equal("<0,003", grid.Find("[data-cell='1.Si']").GetAttribute("value"));
        Assert.False(cell.HasAttribute("blazor:oninput"));
        Assert.False(cell.HasAttribute("blazor:onkeydown"));
    }

    [Theory]
    [InlineData("101", "number.tooLarge")]
    [InlineData("much", "number.notANumber")]
    public void Typed_WrongNumber_IsMarkedAndToldBelowWithRowAndColumn(string text, string code)
    {
        var grid = Draw();
        grid.Find("[data-cell='1.Si']").Change(text);

        var told = Assert.Single(grid.FindAll("[data-testid=cell-findings] li"));
        Assert.Equal(code, told.GetAttribute("data-code"));
        Assert.StartsWith("Burn 2, Si", told.TextContent, StringComparison.Ordinal);
        Assert.Equal("true", grid.Find("[data-cell='1.Si']").GetAttribute("aria-invalid"));
    }

    [Fact]
    public void Row_WrongAsAWhole_IsToldWithItsName()
    {
        ofTheSecondRow = new Finding("burns[1]", "analysis.sum", 120.0);

        Assert.StartsWith("Burn 2", Draw().Find("[data-testid=cell-findings] li").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void SpareColumn_WithAValue_IsNoLongerSpare()
    {
        var grid = Draw();
        Assert.Equal(3, grid.FindAll(".spare").Count);
        Assert.Equal("More elements (1)", grid.Find("[data-grid-more]").TextContent);
        grid.Find("[data-cell='0.Te']").Change("0.001");

        Assert.Empty(grid.FindAll(".spare"));
    }

    private IRenderedComponent<ChemistryGrid> Draw() => Render<ChemistryGrid>(parameters => parameters
        .Add(p => p.Label, "Burns")
        .Add(p => p.Rows, ["Burn 1", "Burn 2"])
        .Add(p => p.Columns, [new GridColumn("C"), new GridColumn("Si"), new GridColumn("Te", IsSpare: true)])
        .Add(p => p.Cell, (row, symbol) => Cell(row, symbol))
        .Add(p => p.RowFinding, row => row == 1 ? ofTheSecondRow : null));

    private QuantityEntry Cell(int row, string symbol) =>
        cells.TryGetValue((row, symbol), out var cell) ? cell : cells[(row, symbol)] = form.Quantity($"{row}.{symbol}", 0, 100, allowsBelow: true);
}
