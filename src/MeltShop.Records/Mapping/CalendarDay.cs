using System.Globalization;
using Microsoft.EntityFrameworkCore.Storage.ValueConversion;

namespace MeltShop.Records.Mapping;

/// <summary>A day is kept as <c>2026-03-31</c>: it sorts as text, and no zone moves it.</summary>
public sealed class CalendarDay() : ValueConverter<DateOnly, string>(day => day.ToString(Form, CultureInfo.InvariantCulture), text => DateOnly.ParseExact(text, Form, CultureInfo.InvariantCulture))
{
    public const string Form = "yyyy-MM-dd";
}
