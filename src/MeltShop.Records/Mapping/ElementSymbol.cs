using MeltShop.Metallurgy.Elements;
using Microsoft.EntityFrameworkCore.Storage.ValueConversion;

namespace MeltShop.Records.Mapping;

/// <summary>An element is kept as its symbol.</summary>
public sealed class ElementSymbol() : ValueConverter<Element, string>(element => element.Symbol, symbol => Element.Parse(symbol));
