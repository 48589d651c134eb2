using MeltShop.Metallurgy.Elements;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Conventions;

namespace MeltShop.Records.Mapping;

/// <summary>How values are kept on both databases. Instants differ and are set by each context.</summary>
internal static class Conventions
{
    public static void Apply(ModelConfigurationBuilder builder)
    {
        builder.Properties<Element>().HaveConversion<ElementSymbol>();
        builder.Properties<Enum>().HaveConversion<string>();
        builder.Properties<decimal>().HaveConversion<MinorUnits>();
        builder.Properties<DateOnly>().HaveConversion<CalendarDay>();

        // An index for each foreign key would double the cost of a reading; the mappings name the ones that a query uses.
        builder.Conventions.Remove<ForeignKeyIndexConvention>();
    }
}
