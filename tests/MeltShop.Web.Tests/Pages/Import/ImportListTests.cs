using Bunit;
using MeltShop.Operations.Importing.Rows;
using MeltShop.Records.People;
using MeltShop.Web.Pages.Import;
using MeltShop.Web.Tests.Texts;
using MeltShop.Web.Texts;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;
using Microsoft.Extensions.DependencyInjection;

namespace MeltShop.Web.Tests.Pages.Import;

public sealed class ImportListTests : ImportTest
{
    [Fact]
    public async Task File_WithFaults_IsShownBeforeItCountsAndTakenInWhenAccepted()
    {
        var page = OpenImport();
        Choose(page, await File("1;HEAT;NOW;3,61;1,52", "1;HEAT;NOW;3,63;1,54", "2;HEAT;NOW;3.61;1,52", "3;X-1;NOW;3,61;1,52"));

        Assert.Equal(["4", "2", "0", "2"], new[] { "rows", "new", "known", "refused" }.Select(name => page.Find($"[data-testid={name}]").TextContent));
        Assert.Equal([("4", "importNumber.otherSign"), ("5", "heat.unknown")], page.FindAll("[data-testid=refused-rows] tr[data-line]").Select(r => (r.GetAttribute("data-line")!, r.GetAttribute("data-code")!)));
        Assert.Contains("3.61", page.Find("tr[data-line='4'][data-code]").TextContent, StringComparison.Ordinal);
        Assert.Empty((await Heat()).Samples);

        var field = page.FindComponent<InputFile>().Instance;
        await page.InvokeAsync(() => page.Find("[data-testid=accept]").Click());
        page.WaitForState(() => page.FindAll("[data-testid=taken]").Count > 0, Patience);
        Assert.NotSame(field, page.FindComponent<InputFile>().Instance); // an empty one: what was taken in is not chosen again when the page is loaded anew
        Assert.Equal([3.61, 3.63], (await Heat()).Samples.Single().Burns.Select(b => b.Readings[0].Percent));
        Assert.Empty(page.FindAll("[data-testid=preview]"));

        await page.InvokeAsync(() => page.Find("tr[data-file] button").Click());
        Assert.Equal(2, page.FindAll("[data-testid=refused-rows] tr[data-line]").Count);
        var file = page.Find("tr[data-file]").GetAttribute("data-file");
        Assert.Equal(["refused", new[] { file }], JSInterop.Invocations["say"][^1].Arguments.Take(2));

        Services.GetRequiredService<NavigationManager>().NavigateTo($"/import?refused={file}");
        Assert.Equal(2, OpenImport().FindAll("[data-testid=refused-rows] tr[data-line]").Count);
    }

    [Fact]
    public void RefusedRows_OfWhichOnlyTheFirstAreKept_SaySo()
    {
        RowFault[] faults = [new(2, "C", "x", "number.notANumber"), new(2, "Si", "x", "number.notANumber"), new(3, "C", "x", "number.notANumber")];
        var table = Render<RefusedTable>(p => p.Add(t => t.Faults, faults).Add(t => t.Rows, 1500));
        Assert.Contains("first 2 refused rows; 1500 were refused", table.Find("[data-testid=not-kept]").TextContent, StringComparison.Ordinal);

        table.Render(p => p.Add(t => t.Rows, 2));
        Assert.Empty(table.FindAll("[data-testid=not-kept]"));
    }

    [Fact]
    public async Task File_ThatComesTwice_HasNothingToTakeIn()
    {
        var page = OpenImport();
        var file = await File("1;HEAT;NOW;3,61;1,52");
        Choose(page, file);
        await page.InvokeAsync(() => page.Find("[data-testid=accept]").Click());
        page.WaitForState(() => page.FindAll("[data-testid=taken]").Count > 0, Patience);
        Choose(page, file);

        Assert.NotNull(page.Find("[data-testid=nothing-new]"));
        Assert.Equal("1", page.Find("[data-testid=known]").TextContent);
        Assert.Empty(page.FindAll("[data-testid=accept]"));
    }

    [Fact]
    public async Task File_ThatArrivesAfterALaterOne_IsNotShownInItsPlace()
    {
        var page = OpenImport();
        var slow = new SlowFile(await File("1;HEAT;NOW;3,61;1,52", "2;HEAT;NOW;3,62;1,52"));
        var first = page.InvokeAsync(() => page.FindComponent<InputFile>().Instance.OnChange.InvokeAsync(new([slow])));
        Choose(page, await File("7;HEAT;NOW;3,65;1,50"), "later.csv");
        Assert.Equal("1", page.Find("[data-testid=rows]").TextContent);
        slow.Arrived.SetResult();
        await first;

        Assert.Equal("1", page.Find("[data-testid=rows]").TextContent);
    }

    [Fact]
    public void File_OfAnotherInstrument_IsRefusedWithItsReason()
    {
        var page = OpenImport();
        Choose(page, "No;Heat;Taken;C;Si\n1;H;N;3,6;1");

        Assert.Equal("importFile.heading", page.Find("[data-testid=findings] li").GetAttribute("data-code"));
        Assert.Empty(page.FindAll("[data-testid=preview]"));
    }

    [Fact]
    public void Page_OfWhoMayNot_OffersNoFile()
    {
        var page = OpenImport(Role.Administrator);
        Assert.Empty(page.FindAll("input[type=file]"));
        Assert.Empty(page.FindAll("a[href='/import/map']"));
    }

    [Fact]
    public async Task Page_InThePseudoLanguage_ShowsNoWordOfItsOwn()
    {
        Speak(PseudoLanguage.Culture);
        var page = OpenImport();
        Choose(page, await File("1;HEAT;NOW;3,61;1,52", "2;HEAT;NOW;3.61;1,52"));

        Assert.Empty(Marks.WordsOutside(page.Nodes, "burns", "burns.csv", "Spectrometer", (await Heat()).Heat.Number, "C", Now.ToString("MMM", System.Globalization.CultureInfo.InvariantCulture)));
    }

    /// <summary>A file whose bytes come when the test says so.</summary>
    private sealed class SlowFile(string text) : IBrowserFile
    {
        private readonly byte[] bytes = System.Text.Encoding.UTF8.GetBytes(text);

        public TaskCompletionSource Arrived { get; } = new();
        public string Name => "slow.csv";
        public DateTimeOffset LastModified => default;
        public long Size => bytes.Length;
        public string ContentType => "text/csv";

        public Stream OpenReadStream(long maxAllowedSize = 512000, CancellationToken cancellationToken = default) => new Late(bytes, Arrived.Task);

        private sealed class Late(byte[] bytes, Task arrived) : MemoryStream(bytes)
        {
            public override async Task CopyToAsync(Stream destination, int bufferSize, CancellationToken cancellationToken)
            {
                await arrived;
                await base.CopyToAsync(destination, bufferSize, cancellationToken);
            }
        }
    }
}
