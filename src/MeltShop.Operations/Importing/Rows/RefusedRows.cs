using MeltShop.Records.Writing;

namespace MeltShop.Operations.Importing.Rows;

/// <summary>Refused rows as they are kept with their file.</summary>
public static class RefusedRows
{
    public static string Text(IEnumerable<RowFault> faults) => RecordsJson.Text(faults.Select(f => f with { Arguments = [.. f.Arguments.Select(a => (object)FormattableString.Invariant($"{a}"))] }));

    public static IReadOnlyList<RowFault> Of(string text) => [.. RecordsJson.Value<List<RowFaultText>>(text)!.Select(f => new RowFault(f.Line, f.Column, f.Text, f.Code, [.. f.Arguments]))];

    private sealed record RowFaultText(int Line, string Column, string Text, string Code, IReadOnlyList<string> Arguments);
}
