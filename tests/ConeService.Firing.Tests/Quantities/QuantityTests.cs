using ConeService.Contract.Quantities;

namespace ConeService.Firing.Tests.Quantities;

public class QuantityTests
{
    [Theory]
    [InlineData("1222C", 1222)]
    [InlineData("1222 °C", 1222)]
    [InlineData("1222c", 1222)]
    [InlineData("2228F", 1220)]
    [InlineData("32F", 0)]
    [InlineData("-40F", -40)]
    [InlineData("1495.15K", 1222)]
    public void A_temperature_is_read_with_its_unit(string text, double celsius)
    {
        Assert.True(Temperature.TryParse(text, out var read, out _));
        Assert.Equal((decimal)celsius, read.Celsius);
    }

    [Theory]
    [InlineData("60C/h", 60)]
    [InlineData("108F/h", 60)]
    [InlineData("108 °F/h", 60)]
    [InlineData("1C/min", 60)]
    [InlineData("60K/h", 60)]
    [InlineData("60 C/hr", 60)]
    public void A_rate_is_read_with_its_unit(string text, double celsiusPerHour)
    {
        Assert.True(HeatingRate.TryParse(text, out var read, out _));
        Assert.Equal((decimal)celsiusPerHour, read.CelsiusPerHour);
    }

    // Source: craft-press-low-fire (150 °F/h), arithmetic: rates do not take the 32 of the scale (check value chk069).
    [Fact]
    public void A_rate_converts_without_the_32()
    {
        Assert.True(HeatingRate.TryParse("150F/h", out var rate, out _));
        Assert.Equal(83.33m, Math.Round(rate.CelsiusPerHour, 2));
    }

    [Theory]
    [InlineData("1222", "temperature-unit-missing")]
    [InlineData("hot", "temperature-unreadable")]
    // Digits, but not those that a number is read of.
    [InlineData("١٢٢٢C", "temperature-unreadable")]
    [InlineData("", "temperature-unreadable")]
    [InlineData("60C/h", "temperature-unreadable")]
    [InlineData("1,222C", "number-ambiguous")]
    [InlineData("NaNC", "temperature-unreadable")]
    public void What_is_no_temperature_is_refused(string text, string code)
    {
        Assert.False(Temperature.TryParse(text, out _, out var finding));
        Assert.Equal(code, finding!.Code);
    }

    [Theory]
    [InlineData("60", "rate-unit-missing")]
    [InlineData("60C", "rate-unit-missing")]
    [InlineData("0C/h", "rate-out-of-range")]
    [InlineData("-60C/h", "rate-out-of-range")]
    [InlineData("4.9C/h", "rate-out-of-range")]
    [InlineData("601C/h", "rate-out-of-range")]
    [InlineData("1081F/h", "rate-out-of-range")]
    [InlineData("999999999999C/min", "rate-out-of-range")]
    [InlineData("60C/day", "rate-unreadable")]
    [InlineData("fast", "rate-unreadable")]
    public void What_is_no_rate_is_refused(string text, string code)
    {
        Assert.False(HeatingRate.TryParse(text, out _, out var finding));
        Assert.Equal(code, finding!.Code);
    }

    [Theory]
    [InlineData("5C/h")]
    [InlineData("600C/h")]
    [InlineData("9F/h")]
    [InlineData("1080F/h")]
    public void The_ends_of_the_range_are_inside(string text) => Assert.True(HeatingRate.TryParse(text, out _, out _));

    [Fact]
    public void A_bare_number_above_1500_is_guessed_to_be_Fahrenheit()
    {
        Assert.False(Temperature.TryParse("2232", out _, out var finding));
        Assert.Contains("2232F is 1222 °C", finding!.LikelyMistake!.ToString(), StringComparison.Ordinal);
    }
}
