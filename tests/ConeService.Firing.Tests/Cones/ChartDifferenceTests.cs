using System.Globalization;
using ConeService.Contract.Cones;
using ConeService.Firing.Cones;
using ConeService.Firing.Tests.Support;

namespace ConeService.Firing.Tests.Cones;

public class ChartDifferenceTests
{
    public static TheoryData<string, string, string> Classroom =>
        [.. CsvFile.Read("Vectors/classroom-chart.csv").Select(r => (r["cone"], r["fahrenheit"], r["tolerance_fahrenheit"]))];

    // Common practice without a source: figures that practitioners quote from an older classroom chart.
    [Theory]
    [MemberData(nameof(Classroom))]
    public void The_older_classroom_figures_lie_within_4_degrees_F_of_the_1926_chart(string cone, string fahrenheit, string tolerance)
    {
        var answer = new EndPointCalculator(Reference.Charts).Answer(Cone.Parse(cone), Reference.Ask("150C/h", "nbs-1926"));
        Assert.InRange((double)(answer.Fahrenheit - Number(fahrenheit)), -(double)Number(tolerance), (double)Number(tolerance));
    }

    [Fact]
    public void Cone_6_says_why_one_chart_prints_2232_F_and_others_do_not()
    {
        var differ = new ConeDescriber(Reference.Charts).Describe(Cone.Parse("6")).ChartsDiffer!;
        Assert.Contains("2232 °F", differ.Message.ToString(), StringComparison.Ordinal);
        Assert.Contains("2246 °F", differ.Message.ToString(), StringComparison.Ordinal); // 1230 °C of 1926
        Assert.Contains("2269 °F", differ.Message.ToString(), StringComparison.Ordinal);
        var shared = Assert.Single(differ.SameFigure, s => s.Celsius == 1222);
        Assert.Equal(
            [("older-150", 150m), ("witness-self-supporting", 60m)],
            shared.PrintedBy.Select(p => (p.Chart, p.RateCelsiusPerHour!.Value)));
        var at150 = Assert.Single(differ.AtRates, r => r.RateCelsiusPerHour == 150);
        Assert.Equal(
            (1222m, "older-150", 1243m, "witness-self-supporting"),
            (at150.LowestCelsius, at150.LowestChart, at150.HighestCelsius, at150.HighestChart));
    }

    [Fact]
    public void An_end_point_names_the_same_figure_on_another_chart()
    {
        var answer = new EndPointCalculator(Reference.Charts).Answer(Cone.Parse("6"), Reference.Ask("60C/h"));
        Assert.Contains(answer.SameConeElsewhere, p => p is { Chart: "older-150", RateCelsiusPerHour: 150m, Celsius: 1222m });
    }

    private static decimal Number(string text) => decimal.Parse(text, CultureInfo.InvariantCulture);
}
