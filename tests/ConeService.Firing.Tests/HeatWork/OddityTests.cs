using System.Text.RegularExpressions;
using ConeService.Contract.HeatWork;
using ConeService.Data;
using ConeService.Firing.Cones;
using ConeService.Firing.HeatWork;
using ConeService.Firing.Tests.Support;

namespace ConeService.Firing.Tests.HeatWork;

/// <summary>What is odd about a cone is known chart by chart, in the data and not in code.</summary>
public sealed partial class OddityTests
{
    // docs/cone-curves.md: the σ of the fit's smoothness term, and "less than 5 °C apart at the slowest printed rate".
    private const double LogEnergyBeyond = 0.25;
    private const decimal TiedBelow = 5;

    private static readonly HeatWorkCalculator Calculator = new(Reference.Charts);

    public static TheoryData<string> Charts => [.. Reference.Dataset.BendingEnergies.Select(e => e.Chart).Distinct()];

    // docs/heat-work.md, honest limits.
    [Theory]
    [InlineData(ConeOddity.RateInsensitive, "022 021 020 05.5 05 14")]
    [InlineData(ConeOddity.RateSensitive, "017 015 014")]
    [InlineData(ConeOddity.NearlyTied, "1 2 3")]
    public void The_odd_cones_of_the_self_supporting_chart_are_those_documented(ConeOddity oddity, string cones) =>
        Assert.Equal(cones.Split(' '), Odd(ConeCharts.DefaultChart, oddity));

    [Theory]
    [MemberData(nameof(Charts))]
    public void Cones_are_nearly_tied_by_the_rule(string chart)
    {
        var cells = Reference.Dataset.EndPoints.Where(e => e.Chart == chart).ToList();
        var slowest = cells.Min(e => e.RateCelsiusPerHour);
        var printed = cells.Where(e => e.RateCelsiusPerHour == slowest).ToList();
        var tied = printed.Zip(printed.Skip(1)).Where(p => Math.Abs(p.Second.Celsius - p.First.Celsius) < TiedBelow)
            .SelectMany(p => new[] { p.First.Cone, p.Second.Cone }).Distinct();

        Assert.Equal(tied, Odd(chart, ConeOddity.NearlyTied));
    }

    // The self-supporting chart's odd slopes are a judgement; a chart printed to 5 °C is left blank.
    [Theory]
    [InlineData("witness-large")]
    [InlineData("witness-large-iron-free")]
    [InlineData("witness-self-supporting-iron-free")]
    public void Slopes_are_odd_by_the_rule(string chart)
    {
        var energies = Reference.Dataset.BendingEnergies.Where(e => e.Chart == chart).ToList();
        var logs = energies.Select(e => Math.Log((double)e.ActivationEnergyKilojoulesPerMole)).ToList();
        var off = Enumerable.Range(2, logs.Count - 4).ToDictionary(i => energies[i].Cone, i => (Off(i, 1), Off(i, 2)));

        Assert.Equal(
            off.Where(o => Math.Min(o.Value.Item1, o.Value.Item2) > LogEnergyBeyond).Select(o => o.Key),
            Odd(chart, ConeOddity.RateInsensitive));
        Assert.Equal(
            off.Where(o => Math.Max(o.Value.Item1, o.Value.Item2) < -LogEnergyBeyond).Select(o => o.Key),
            Odd(chart, ConeOddity.RateSensitive));

        double Off(int i, int reach) => logs[i] - Enumerable.Range(i - reach, (2 * reach) + 1).Where(j => j != i).Average(j => logs[j]);
    }

    [Fact]
    public void A_chart_printed_to_five_degrees_says_nothing_of_slopes()
    {
        Assert.All(Reference.Dataset.EndPoints.Where(e => e.Chart == "nbs-1926"), e => Assert.Equal(0, e.Celsius % 5));
        Assert.All(Reference.Dataset.BendingEnergies.Where(e => e.Chart == "nbs-1926"), e => Assert.Null(e.Oddity));
    }

    // 05 goes down at 1031 °C (self-supporting) and 1030 °C (large) at 60 °C/h, 04 at 1063 and 1060.
    [Theory]
    [InlineData(null, 1045, "Cone 05 moves less with the rate than its neighbours in the chart")]
    [InlineData("witness-large", 1045, null)]
    [InlineData("witness-large-iron-free", 1045, null)]
    [InlineData("witness-self-supporting-iron-free", 1050, null)]
    [InlineData("nbs-1926", 1045, null)]
    // 014 at 807 °C, 013 at 837 on both; the older chart prints 150 °C/h only and borrows the curve with its oddity.
    [InlineData(null, 820, "Cone 014 moves more with the rate than its neighbours in the chart")]
    [InlineData("witness-large", 820, null)]
    [InlineData("older-150", 820, "Cone 014 moves more with the rate than its neighbours in the chart")]
    public void A_slope_is_called_odd_only_where_the_chart_s_own_curve_is(string? chart, double peak, string? sentence)
    {
        var odd = Warnings(chart, peak).Where(w => w.Code == "odd-cone").Select(w => w.Message).ToList();

        if (sentence is null)
            Assert.Empty(odd);
        else
            Assert.StartsWith(sentence, Assert.Single(odd).ToString(), StringComparison.Ordinal);
    }

    // 2 goes down at 1142 °C and 3 at 1152 on both charts at 60 °C/h; 12 °C and 24 °C further come the next.
    [Theory]
    [InlineData(null, 1147, "Cones 1, 2 and 3 are nearly tied at slow rates; the fraction between them means little.")]
    [InlineData("witness-large", 1147, null)]
    [InlineData(null, 1157, null)]
    public void Cones_are_called_nearly_tied_only_where_the_chart_ties_them(string? chart, double peak, string? sentence) =>
        Assert.Equal(sentence, Warnings(chart, peak).SingleOrDefault(w => w.Code == "cones-nearly-tied")?.Message.ToString());

    // The cones of the refractories test begin at 12: none of them is among the iron-bearing 010 to 3.
    [Theory]
    [InlineData("witness-large", 1222, true)]
    [InlineData("small", 1222, true)]
    [InlineData("witness-large-iron-free", 1100, false)]
    [InlineData("witness-self-supporting-iron-free", 1100, false)]
    [InlineData("pce", 1400, false)]
    public void Reduction_is_warned_of_where_the_chart_has_cones_that_it_moves(string chart, double peak, bool warned) =>
        Assert.Equal(warned, Warnings(chart, peak, "reduction").Any(w => w.Code == "reduction-not-modelled"));

    [Theory]
    [InlineData("small", true)]
    [InlineData("witness-large", false)]
    public void Cones_that_bend_later_are_told_where_the_chart_says_so(string chart, bool warned) =>
        Assert.Equal(warned, Warnings(chart, 1222).Any(w => w.Code == "small-cones"));

    /// <summary>Forms, compositions and numbers of cones are data: code that asks for one by name is wrong for other charts.</summary>
    [Fact]
    public void No_cone_form_composition_or_cone_number_is_asked_for_in_code()
    {
        string[] files = [.. SourceFiles.Of("HeatWork"), .. SourceFiles.Of("Cones")];
        var words = Reference.Dataset.Charts.SelectMany(c => new[] { c.ConeForm, c.Composition }).ToHashSet(StringComparer.Ordinal);
        var charts = Reference.Dataset.Charts.Select(c => c.Id).Where(id => id != ConeCharts.DefaultChart)
            .ToHashSet(StringComparer.Ordinal);
        var cones = Reference.Dataset.Cones.Select(c => c.Id).ToHashSet(StringComparer.Ordinal);

        Assert.All(files, file =>
        {
            var found = Literals().Matches(File.ReadAllText(file)).Select(m => m.Groups[1].Value)
                .Where(l => words.Contains(l) || charts.Contains(l)).ToList();
            Assert.True(found.Count == 0, $"{Path.GetFileName(file)} asks for {string.Join(", ", found)}");
        });
        Assert.DoesNotContain(
            Literals().Matches(File.ReadAllText(files.Single(f => Path.GetFileName(f) == "HeatWorkWarnings.cs")))
                .Select(m => m.Groups[1].Value),
            cones.Contains);
    }

    private static IEnumerable<string> Odd(string chart, ConeOddity oddity) =>
        Reference.Dataset.BendingEnergies.Where(e => e.Chart == chart && e.Oddity == oddity).Select(e => e.Cone);

    private static IReadOnlyList<HeatWarning> Warnings(string? chart, double peak, string? atmosphere = null) =>
        Calculator.Answer(
            new HeatWorkRequest { Units = "C", Segments = [new(60, peak)], Chart = chart, Atmosphere = atmosphere }).Answer.Warnings;

    [GeneratedRegex("\"([^\"\n]*)\"")]
    private static partial Regex Literals();
}
