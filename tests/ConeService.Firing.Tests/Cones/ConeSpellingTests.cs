using ConeService.Contract.Answers;
using ConeService.Firing.Cones;
using ConeService.Firing.Tests.Support;

namespace ConeService.Firing.Tests.Cones;

/// <summary>Spellings of the contract (shared design, “Accepted spellings of cone input”) and the refusals it asks for.</summary>
public class ConeSpellingTests
{
    [Theory]
    [InlineData("06", "06")]
    [InlineData("6", "6")]
    [InlineData("o6", "06")]
    [InlineData("O6", "06")]
    [InlineData("^6", "6")]
    [InlineData("^06", "06")]
    [InlineData("cone 6", "6")]
    [InlineData("Cone 06", "06")]
    [InlineData("Δ6", "6")]
    [InlineData("∆06", "06")]
    [InlineData("05½", "05.5")]
    [InlineData("05.5", "05.5")]
    [InlineData("05 1/2", "05.5")]
    [InlineData("5-1/2", "5.5")]
    [InlineData("5 ½", "5.5")]
    [InlineData(" 10 ", "10")]
    [InlineData("010", "010")]
    [InlineData("022", "022")]
    [InlineData("06a", "06a")]
    [InlineData("6A", "6a")]
    [InlineData("31.5", "31.5")]
    public void A_spelling_people_use_is_read(string text, string cone)
    {
        Assert.True(Reference.Charts.Scale.TryRead(text, "cone", out var read, out _));
        Assert.Equal(cone, read.ToString());
    }

    [Theory]
    [InlineData("0", "cone-zero", "01,1")]
    [InlineData("00", "cone-zero", "01,1")]
    [InlineData("o", "cone-zero", "01,1")]
    [InlineData("cone 0", "cone-zero", "01,1")]
    [InlineData("-0", "cone-zero", "01,1")]
    [InlineData("6.0", "cone-unreadable", "6")]
    [InlineData("06.0", "cone-unreadable", "06")]
    [InlineData("-6", "cone-unreadable", "06,6")]
    [InlineData("006", "cone-unreadable", "06")]
    [InlineData("6.47", "cone-unknown", "6")]
    [InlineData("6.5", "cone-unknown", "6,7")]
    // Digits, but not those that a number is read of.
    [InlineData("1٣", "cone-unreadable", "06,o6,^6,cone 6,Δ6,05.5,05½,05 1/2")]
    [InlineData("023", "cone-unknown", "022 to 42")]
    [InlineData("43", "cone-unknown", "022 to 42")]
    [InlineData("21", "cone-unknown", "20,23")]
    [InlineData("8a", "cone-unknown", "8,9")]
    [InlineData("100", "cone-unknown", "022 to 42")]
    [InlineData("six", "cone-unreadable", null)]
    [InlineData("", "cone-unreadable", null)]
    [InlineData("1222C", "cone-unreadable", null)]
    public void What_is_no_cone_is_refused_with_the_nearest_real_ones(string text, string code, string? allowed)
    {
        Assert.False(Reference.Charts.Scale.TryRead(text, "cone", out _, out var finding));
        Assert.Equal((code, "cone", text), (finding!.Code, finding.Field, finding.Value));
        if (allowed is not null) Assert.Equal(allowed, string.Join(",", finding.Allowed));
    }

    [Fact]
    public void A_number_is_refused_with_both_cones_it_could_mean()
    {
        Assert.False(ConeInput.TryRead(Reference.Charts.Scale, new("6", SentKind.Number), "/cone", out _, out var finding));
        Assert.Equal("cone-as-number", finding!.Code);
        Assert.Equal(["\"6\"", "\"06\""], finding.Allowed.Select(a => a.ToString()));
        Assert.Contains("200 °C", finding.Message.ToString(), StringComparison.Ordinal);
    }
}
