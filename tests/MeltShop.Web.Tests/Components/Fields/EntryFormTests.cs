using MeltShop.Metallurgy;
using MeltShop.Operations;
using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Tests.Components.Fields;

public sealed class EntryFormTests
{
    private readonly EntryForm form = new();
    private readonly List<Guid> arrived = [];

    [Fact]
    public async Task Send_PressedTwiceBeforeTheAnswer_ArrivesOnce()
    {
        var answer = new TaskCompletionSource<Outcome<long>>();
        var first = form.Send(key => Arrive(key, answer.Task));
        var second = await form.Send(key => Arrive(key, answer.Task));
        answer.SetResult(Outcome<long>.Of(1));

        Assert.Equal(1, (await first)?.Value);
        Assert.Null(second);
        Assert.Single(arrived);
    }

    [Fact]
    public void Rows_MadeInTheSameOrder_HaveTheSameNames()
    {
        Assert.Equal(["row0", "row1", "row2", "row1"], Names(form));
        Assert.Equal(["row0", "row1", "row2", "row1"], Names(new EntryForm())); // that of a page that was loaded anew

        static string[] Names(EntryForm form)
        {
            var made = new[] { Add(form), Add(form), Add(form) };
            form.Remove(form.Fields[1]);
            return [.. made, Add(form)];
        }

        static string Add(EntryForm form)
        {
            var name = form.NameRow();
            form.Quantity(name + ".percent");
            return name;
        }
    }

    [Fact]
    public async Task Send_PressedAgainAfterAcceptance_ArrivesOnce()
    {
        await form.Send(Accept);
        await form.Send(Accept);

        Assert.Single(arrived);
    }

    [Fact]
    public async Task Send_TypedAnewAfterAcceptance_IsAnotherEntry()
    {
        var kg = form.Quantity("kg", 0, 100, isRequired: true);
        kg.Text = "5";
        await form.Send(Accept);
        kg.Text = "6";
        await form.Send(Accept);

        Assert.Equal(2, arrived.Distinct().Count());
    }

    [Fact]
    public async Task Send_ProgramFailed_KeepsKeyAndText()
    {
        var kg = form.Quantity("kg", 0, 100, isRequired: true);
        kg.Text = "5";
        await Assert.ThrowsAsync<InvalidOperationException>(() => form.Send<long>(key =>
        {
            arrived.Add(key);
            throw new InvalidOperationException("database gone");
        }));
        await form.Send(Accept);

        Assert.Single(arrived.Distinct());
        Assert.Equal("5", kg.Text);
    }

    [Fact]
    public async Task Send_FieldStandsAgainstIt_SendsNothingAndSaysWhere()
    {
        var kg = form.Quantity("kg", 0, 100, isRequired: true);
        await form.Send(Accept);

        Assert.Empty(arrived);
        Assert.Equal("number.missing", kg.Finding?.Code);
    }

    [Fact]
    public async Task Send_OperationRefuses_FindingIsAtItsFieldUntilItIsTypedAnew()
    {
        var kg = form.Quantity("kg", 0, 100, isRequired: true);
        kg.Text = "5";
        await form.Send(key => Arrive(key, Task.FromResult(Outcome<long>.Refused([new Finding("kg", "stock.short", 3.0), new Finding("", "state.wrong")]))));

        Assert.Equal("stock.short", kg.Finding?.Code);
        Assert.Equal(["state.wrong"], form.Unplaced.Select(finding => finding.Code));
        kg.Text = "3";
        Assert.Null(kg.Finding);
    }

    [Theory]
    [InlineData("-1", "number.tooSmall")]
    [InlineData("101", "number.tooLarge")]
    [InlineData("x", "number.notANumber")]
    public void Finding_TextOutsideTheRange_IsAtTheField(string text, string code)
    {
        var kg = form.Quantity("kg", 0, 100);
        kg.Text = text;

        Assert.Equal(code, kg.Finding?.Code);
        Assert.Null(kg.Value);
    }

    private Task<Outcome<long>> Accept(Guid key) => Arrive(key, Task.FromResult(Outcome<long>.Of(1)));

    private Task<Outcome<long>> Arrive(Guid key, Task<Outcome<long>> answer)
    {
        arrived.Add(key);
        return answer;
    }
}
