using System.Globalization;
using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Firing.Cones;
using ConeService.Firing.Tests.Support;

namespace ConeService.Firing.Tests.Cones;

/// <summary>Every printed cell of every chart, against the rows of data/end-points.csv read as plain text.</summary>
public class PrintedCellTests
{
    private static readonly List<Dictionary<string, string>> Rows = CsvFile.Read("data/end-points.csv");

    public static TheoryData<string> Charts => [.. Rows.Select(r => r["chart"]).Distinct()];

    // Cut off in print, and corrected: 717, 747, 792, 852 and 1046 °C are 1322.6, 1376.6, 1457.6, 1565.6 and 1914.8 °F.
    private static readonly Dictionary<(string, string), string> Adopted = new()
    {
        [("older-150", "018")] = "1323",
        [("older-150", "017")] = "1377",
        [("older-150", "016")] = "1458",
        [("older-150", "013")] = "1566",
        [("older-150", "05")] = "1915",
    };

    [Fact]
    public void All_eleven_charts_are_there_with_every_cell() => Assert.Equal((11, 603), (Charts.Count, Rows.Count));

    [Theory]
    [MemberData(nameof(Charts))]
    public void A_printed_cell_comes_back_exactly_with_its_source_and_confidence(string chart)
    {
        var calculator = new EndPointCalculator(Reference.Charts);
        foreach (var row in Rows.Where(r => r["chart"] == chart))
        {
            var rate = row["rate_celsius_per_hour"];
            var question = Reference.Ask(rate.Length == 0 ? null : rate + "C/h", chart);
            var answer = calculator.Answer(Cone.Parse(row["cone"]), question);

            Assert.Equal(row["celsius"], answer.Celsius.ToString(CultureInfo.InvariantCulture));
            Assert.Equal(rate, answer.RateCelsiusPerHour?.ToString(CultureInfo.InvariantCulture) ?? "");
            if (row["fahrenheit"].Length > 0)
            {
                Assert.Equal(
                    Adopted.GetValueOrDefault((chart, row["cone"]), row["fahrenheit"]),
                    answer.Fahrenheit.ToString(CultureInfo.InvariantCulture));
                var isCorrected = Adopted.ContainsKey((chart, row["cone"]));
                Assert.Equal(isCorrected ? FahrenheitBasis.Corrected : FahrenheitBasis.Printed, answer.FahrenheitBasis);
            }
            else
            {
                Assert.Equal(FahrenheitBasis.Converted, answer.FahrenheitBasis);
            }

            Assert.Equal(Basis.Printed, answer.Basis);
            Assert.Equal(row["confidence"].Replace("-", "", StringComparison.Ordinal), answer.Confidence.ToString(), ignoreCase: true);
            Assert.Equal([row["source"]], answer.Sources);
        }
    }

    [Theory]
    [MemberData(nameof(Charts))]
    public void A_printed_temperature_reads_back_as_its_own_cone(string chart)
    {
        var reader = new ReadingCalculator(Reference.Charts);
        foreach (var row in Rows.Where(r => r["chart"] == chart))
        {
            var rate = row["rate_celsius_per_hour"];
            // a refractories cone without a rate on a chart with one
            if (rate.Length == 0 && Reference.Ask(null, chart).Rate is not null) continue;
            var celsius = decimal.Parse(row["celsius"], CultureInfo.InvariantCulture);
            var reading = reader.Answer(new(celsius), Reference.Ask(rate.Length == 0 ? null : rate + "C/h", chart));
            if (Inverted.Contains((chart, row["cone"], rate))) continue;
            Assert.Equal((row["cone"], 0.0), (reading.Reached, reading.Fraction ?? 0));
        }
    }

    // The one inversion: 1926 prints 011 above 010 at 150 °C/h, so neither reads back as itself.
    private static readonly HashSet<(string, string, string)> Inverted = [("nbs-1926", "010", "150"), ("nbs-1926", "011", "150")];

    [Fact]
    public void The_inverted_pair_of_1926_is_flagged_out_of_order()
    {
        var reading = new ReadingCalculator(Reference.Charts).Answer(new(900m), Reference.Ask("150C/h", "nbs-1926"));
        Assert.Equal("012", reading.Reached);
        Assert.Equal(["010"], reading.OutOfOrder);
    }
}
