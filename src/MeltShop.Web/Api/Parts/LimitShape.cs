using System.ComponentModel;

namespace MeltShop.Web.Api.Parts;

/// <summary>How a limit is written in a request: for the OpenAPI document, read by <see cref="LimitReader"/>.</summary>
internal record LimitShape
{
    [Description("An element symbol, or a name of your own with terms.")]
    public required string Quantity { get; init; }

    [Description("Factor by element symbol: the quantity is constant + the sum of factor × percent.")]
    public IReadOnlyDictionary<string, double>? Terms { get; init; }

    [Description("Added to the sum of the terms; 0 where absent.")]
    public double? Constant { get; init; }

    [Description("Least value; one bound at least is needed.")]
    public double? Min { get; init; }

    [Description("Greatest value, not below the least.")]
    public double? Max { get; init; }
}
