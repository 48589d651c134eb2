using MeltShop.Records.Sites;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Components.Units;

namespace MeltShop.Web.Tests.Components.Units;

/// <summary>
/// Units and the way between them. Factors: A. Thompson, B. N. Taylor, Guide for the Use of the International System of Units, NIST
/// Special Publication 811, 2008 edition, appendix B: 1 lb (avoirdupois) = 4.535 923 7 E-01 kg exactly; t/°C = (t/°F − 32)/1.8 exactly.
/// </summary>
public sealed class MeasureTests
{
    private const int Seed = 1959, Cases = 20_000;

    private static readonly ShopUnits Imperial = ShopUnits.Of(MassUnit.Pound, TemperatureUnit.Fahrenheit);

    [Theory]
    [InlineData(1, 0.45359237)]
    [InlineData(100, 45.359237)]
    [InlineData(2000, 907.18474)]
    public void Pound_ByItsDefinition_IsSoManyKilograms(double pounds, double kg) => Assert.Equal(kg, Measure.Pound.ToRecorded(pounds));

    [Theory]
    [InlineData(32, 0)]
    [InlineData(212, 100)]
    [InlineData(-40, -40)]
    [InlineData(2012, 1100)]
    [InlineData(3092, 1700)]
    public void Fahrenheit_ByItsDefinition_IsSoManyDegreesCelsius(double fahrenheit, double celsius)
    {
        Assert.Equal(celsius, Measure.Fahrenheit.ToRecorded(fahrenheit));
        Assert.Equal(fahrenheit, Measure.Fahrenheit.FromRecorded(celsius));
    }

    [Fact]
    public void Difference_InFahrenheit_HasNoZeroOfTheScale() => Assert.Equal(54, Measure.FahrenheitDegree.FromRecorded(30));

    /// <summary>What is typed is kept exactly: whatever is typed into a field comes back from the records with the same digits.</summary>
    [Theory]
    [InlineData(Dimension.Mass, 0.03, 220_000)]
    [InlineData(Dimension.Temperature, 2012, 3092)]
    [InlineData(Dimension.TemperatureDifference, 0, 90)]
    public void Typed_AnyNumberOfTheField_ComesBackWithTheSameDigits(Dimension dimension, double least, double most)
    {
        TestContext.Current.TestOutputHelper?.WriteLine($"seed {Seed}, {Cases} cases");
        var random = new Random(Seed);
        for (var number = 0; number < Cases; number++)
        {
            var decimals = random.Next(0, 7);
            var text = NumberText.Show(least + (random.NextDouble() * (most - least)), decimals, System.Globalization.CultureInfo.InvariantCulture);
            var field = Field(dimension);
            field.Text = text + (decimals == 3 ? "0" : "");
            var kept = field.Value;
            var again = Field(dimension).Showing(kept);

            Assert.True(kept is not null, $"{text}: {field.Finding?.Code}");
            Assert.Equal(double.Parse(text, System.Globalization.CultureInfo.InvariantCulture), double.Parse(again.Text, System.Globalization.CultureInfo.InvariantCulture));
            Assert.Equal(kept, again.Value);
        }
    }

    /// <summary>The records' own number is not touched by being shown in another unit.</summary>
    [Fact]
    public void Shown_AnyRecordedNumber_IsHandedInAsItWas()
    {
        TestContext.Current.TestOutputHelper?.WriteLine($"seed {Seed}, {Cases} cases");
        var random = new Random(Seed);
        for (var number = 0; number < Cases; number++)
        {
            var kg = random.NextDouble() * Math.Pow(10, random.Next(-2, 6));
            Assert.Equal(kg, Field(Dimension.Mass).Showing(kg).Value);
        }
    }

    /// <summary>What was recorded in kg stands as a scale in lb shows it, and is handed in as it was, even when the same text is told again.</summary>
    [Theory]
    [InlineData(5000, "11023")]
    [InlineData(6000, "13228")]
    [InlineData(20, "44.1")]
    [InlineData(1, "2.20")]
    [InlineData(0.01, "0.0220")]
    [InlineData(0.00001, "0.000022046226218488")]
    [InlineData(45.359237, "100")]
    public void Standing_MassThatWasRecordedInKilograms_IsShownAsItIsWeighedAndHandedInExactly(double kg, string text)
    {
        var field = Field(Dimension.Mass).Showing(kg);

        Assert.Equal(double.Parse(text, System.Globalization.CultureInfo.InvariantCulture), double.Parse(field.Text, System.Globalization.CultureInfo.InvariantCulture), 15);
        var stood = field.Text;
        field.Text = stood;
        Assert.Equal(kg, field.Value);
        field.Text = "11024";
        Assert.Equal(11024 * 0.45359237, field.Value);
        field.Text = stood;
        Assert.Equal(kg, field.Value);
    }

    [Fact]
    public void Standing_MassThatIsTypedIntoItsEmptiedField_IsWhatWasTyped()
    {
        var field = Field(Dimension.Mass).Showing(5000);
        var stood = field.Text;

        field.Text = "";
        field.Text = stood;

        Assert.Equal(11023 * 0.45359237, field.Value);
    }

    [Fact]
    public void Standing_PriceOfATonne_IsShownInHundredthsOfAShortTon() => Assert.Equal("299.37", Field(Dimension.PerTonne).Showing(330).Text);

    [Fact]
    public void Typed_MoreDigitsThanComeBack_IsRefused()
    {
        var field = Field(Dimension.Mass);
        field.Text = "1234.56789012345";

        Assert.Equal("number.tooLong", field.Finding?.Code);
    }

    [Fact]
    public void Range_InAnotherUnit_IsRoundedToTheInside()
    {
        var form = new EntryForm();
        form.Speak(Imperial);
        var field = form.Mass("kg", 0.01, 100_000);

        Assert.Equal(new NumberRange(0.02205, 220_400), field.Range);
        foreach (var text in new[] { "0.02205", "220400" })
        {
            field.Text = text;
            Assert.Null(field.Finding);
        }

        field.Text = "0.022";
        Assert.Equal(("number.tooSmall", 0.02205), (field.Finding!.Code, field.Finding.Arguments[0]));
    }

    [Fact]
    public void Typed_ThatCouldBeThousandsInPounds_IsAskedInPounds()
    {
        var field = Field(Dimension.Mass);
        field.Text = "1,250";

        Assert.Equal([1.25, 1250], field.Reading.Choices);
    }

    private static QuantityEntry Field(Dimension dimension)
    {
        var form = new EntryForm();
        form.Speak(Imperial);
        return form.Quantity("field").Of(dimension);
    }
}
