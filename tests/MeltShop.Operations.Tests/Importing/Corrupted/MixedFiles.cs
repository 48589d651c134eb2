using System.Globalization;
using System.Text;
using MeltShop.Operations.Importing.Maps;
using MeltShop.Records.Laboratory;

namespace MeltShop.Operations.Tests.Importing.Corrupted;

/// <summary>Files that hold coins, grey ones among them, cups, chill wedges and checks of the instrument; all figures are invented.</summary>
public static class MixedFiles
{
    public const string Headings = SampleFiles.Headings + ";Fracture;TL;TElow;TEhigh;Chill;Block";

    public static ColumnMap Map { get; } = SampleFiles.Map with
    {
        GreyText = "grey",
        WhiteText = "white",
        KindTexts = [.. SampleFiles.Map.KindTexts, new("cup", SampleKind.Cup), new("wedge", SampleKind.ChillWedge)],
        Columns =
        [
            .. SampleFiles.Map.Columns, new(12, "Fracture", ColumnRole.Fracture), new(13, "TL", ColumnRole.Figure, Figure: FigureQuantity.LiquidusC),
            new(14, "TElow", ColumnRole.Figure, Figure: FigureQuantity.EutecticLowC), new(15, "TEhigh", ColumnRole.Figure, Figure: FigureQuantity.EutecticHighC),
            new(16, "Chill", ColumnRole.Figure, Figure: FigureQuantity.ChillMm), new(17, "Block", ColumnRole.Reference),
        ],
    };

    /// <summary>Rows with <c>H</c> for the heat and <c>T</c> for the instant.</summary>
    public static byte[] Text(string heat, string takenAt, params IEnumerable<string> rows) => Encoding.UTF8.GetBytes(string.Join("\r\n", rows.Select(row => row
        .Replace(";H;", $";{heat};", StringComparison.Ordinal).Replace(";T;", $";{takenAt};", StringComparison.Ordinal)).Prepend(Headings)) + "\r\n");

    /// <summary>A few rows of each sort.</summary>
    public static byte[] Some(Random random, char sign) => Text("TB-2026-0001", "2026-03-02 07:00:00", Enumerable.Range(0, random.Next(2, 12)).Select(n => string.Create(
        CultureInfo.InvariantCulture,
        $"{n};{random.Next(4) switch
        {
            0 => "H;;second;K1;T;1;3.61;1.52;0.30;;;GREY;;;;;",
            1 => "H;;cup;;T;1;;;;;;;1196.8;1141;1148.5;;",
            2 => "H;;wedge;W;T;1;;;;;;;;;;6.5;",
            _ => ";;;;T;1;3.31;1.90;0.45;;;;;;;;block-1",
        }}").Replace('.', sign)));
}
