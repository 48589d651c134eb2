using Bunit;
using MeltShop.Operations.Importing.Maps;
using MeltShop.Operations.Laboratory;
using MeltShop.Records.Laboratory;
using MeltShop.Records.People;
using MeltShop.Web.Pages.Import;
using MeltShop.Web.Tests.Pages.Heats;
using Microsoft.AspNetCore.Components.Forms;

namespace MeltShop.Web.Tests.Pages.Import;

/// <summary>A heat that has been started, a spectrometer, and a map of its files.</summary>
public abstract class ImportTest : HeatTest
{
    protected const string Headings = "Nr;Heat;Taken;C;Si";

    protected static ColumnMap Map { get; } = new()
    {
        Instrument = "spark", Layout = RowLayout.BurnPerRow, DecimalSign = DecimalSign.Comma, Separator = ';', TimeForm = "yyyy-MM-ddTHH:mm:ss.ffffffK", UsualKind = SampleKind.Bath,
        Columns =
        [
            new(0, "Nr", ColumnRole.SampleNumber), new(1, "Heat", ColumnRole.Heat), new(2, "Taken", ColumnRole.TakenAt), new(3, "C", ColumnRole.Element, "C"),
            new(4, "Si", ColumnRole.Element, "Si"),
        ],
    };

    protected override async Task Prepare()
    {
        await base.Prepare();
        await The<AddInstrument>().Run(Founder, new(Guid.NewGuid(), Now, "spark", "Spectrometer", InstrumentKind.Spark, false, []), Cancellation);
        var made = await The<SaveImportMap>().Run(Founder, new(Guid.NewGuid(), Now, null, null, "burns", Map), Cancellation);
        Assert.True(made.Succeeded);
    }

    protected async Task<string> File(params string[] rows)
    {
        var heat = (await Heat()).Heat.Number;
        var now = Now.UtcDateTime.ToString("yyyy-MM-ddTHH:mm:ss.ffffffZ", System.Globalization.CultureInfo.InvariantCulture);
        return string.Join("\n", rows.Select(r => r.Replace("HEAT", heat, StringComparison.Ordinal).Replace("NOW", now, StringComparison.Ordinal)).Prepend(Headings));
    }

    protected IRenderedComponent<ImportList> OpenImport(string role = Role.Metallurgist)
    {
        SignIn(role);
        var page = Render<ImportList>();
        page.WaitForState(() => page.FindAll("[data-state=ready]").Count > 0, Patience);
        return page;
    }

    /// <summary>Chooses the file and waits for what the page says of it.</summary>
    protected static void Choose(IRenderedComponent<ImportList> page, string text, string name = "burns.csv")
    {
        page.FindComponent<InputFile>().UploadFiles(InputFileContent.CreateFromText(text, name));
        page.WaitForState(() => page.FindAll("[data-testid=preview], [data-testid=findings]").Count > 0, Patience);
    }
}
