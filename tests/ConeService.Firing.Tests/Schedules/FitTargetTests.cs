using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.Kilns;
using ConeService.Contract.Schedules;
using ConeService.Firing.Tests.Support;

namespace ConeService.Firing.Tests.Schedules;

/// <summary>Where the target cone ends, in the units, charts and positions that can be asked for.</summary>
public class FitTargetTests
{
    // Heat-work specification, section 3: cone 6 points to two o'clock 11 K short of its end point, to four 4.4 K and to five 2 K; by its
    // curve, computed apart in Python, that is a progress of 0.656, 0.840 and 0.922.
    [Theory]
    [InlineData(2, 0.656)]
    [InlineData(4, 0.840)]
    [InlineData(5, 0.922)]
    [InlineData(6, 1)]
    public void A_chosen_hand_of_the_clock_is_a_progress(double clock, double progress)
    {
        var fit = Fits.Fit("mid-range-glaze", "6", clock: clock).Answer;
        Assert.InRange(fit.HeatWork.TargetProgress!.Value, progress - 0.03, progress + 0.03);
        // The peak is in whole degrees, each of which is up to 4 % of progress here and some 4 degrees of lean.
        Assert.Equal(clock * 15, fit.HeatWork.Cones.Single(c => c.Cone == "6").BendDegrees, 4.0);
    }

    [Fact]
    public void In_Fahrenheit_everything_is_whole_degrees_Fahrenheit()
    {
        var fit = Fits.Fit("mid-range-glaze-crystal-cooling", "5.5", Fits.Kilns["small"], units: "F").Answer;
        Assert.All(fit.Segments, s =>
        {
            Assert.Equal(Math.Round(s.TargetFahrenheit), s.TargetFahrenheit);
            Assert.Equal(Math.Round(s.RateFahrenheitPerHour!.Value), s.RateFahrenheitPerHour!.Value);
            Assert.Equal(Math.Round(s.HoldMinutes), s.HoldMinutes);
        });
        Assert.InRange(fit.HeatWork.TargetProgress!.Value, 0.95, 1.05);
        Assert.True(fit.HeatWork.NextProgress < 1);
    }

    [Theory]
    [InlineData("witness-large")]
    [InlineData("small")]
    [InlineData("older-150")]
    public void Another_chart_gives_another_peak_for_the_same_cone(string chart)
    {
        var fit = Fits.Fit("bisque-mixed-ware", "06", chart: chart).Answer;
        Assert.Equal(chart, fit.Chart);
        Assert.InRange(fit.HeatWork.TargetProgress!.Value, 0.95, 1.05);
        Assert.NotEqual(Fits.Fit("bisque-mixed-ware", "06").Answer.PeakCelsius, fit.PeakCelsius);
    }

    [Fact]
    public void Soda_goes_in_when_the_cone_before_the_last_is_down()
    {
        var fit = Fits.Fit("soda", "10").Answer;
        // The vapour segment ends with cone 9 down, the programme with cone 10.
        var nine = fit.HeatWork.Cones.Single(c => c.Cone == "9");
        Assert.InRange(nine.DownAtMinutes!.Value, fit.Segments[^2].HoldStartMinutes, fit.Segments[^2].EndMinutes + 9);
    }

    [Fact]
    public void A_kiln_that_is_too_weak_is_told_what_it_does_instead_and_what_helps()
    {
        var kiln = new Kiln("tired", "electric", VolumeLitres: 150, Kilowatts: 8, VoltsInstalled: 240, VoltsAsWired: 208, ElementAge: 1);
        var forecast = Fits.Fit("mid-range-glaze", "6", kiln, new(KilogramsWare: 45, KilogramsFurniture: 20)).Answer.Kiln!;
        Assert.False(forecast.CanFollow);
        // 8 kW × (208/240)² ÷ 1.1 = 5.46 kW.
        Assert.Equal(5.46, forecast.AvailableKilowatts, 0.01);
        Assert.Contains("cones read", forecast.Instead!.ToString(), StringComparison.Ordinal);
        Assert.Contains(forecast.Remedies, r => r.Code == "full-voltage");
        Assert.Contains(forecast.Remedies, r => r.Code == "new-elements");
        Assert.Contains(forecast.Remedies, r => r.Code is "slower-ramps" or "cooler-cone");
    }

    [Fact]
    public void Energy_is_priced_with_its_uncertainty()
    {
        var kiln = Fits.Fit("bisque-mixed-ware", "06", Fits.Kilns["small"], tariff: new(0.3, "EUR")).Answer.Kiln!;
        Assert.Equal(kiln.Energy.TotalKilowattHours * 0.3, kiln.Cost!.Amount!.Value, 0.01);
        Assert.Equal(0.8 * kiln.Cost.Amount!.Value, kiln.Cost.Low, 0.02);
        Assert.Equal("EUR", kiln.Cost.Currency);
    }

    [Fact]
    public void Gas_without_a_factor_of_its_own_is_priced_as_a_span_only()
    {
        var kiln = Fits.Fit("gas-reduction", "10", Fits.Kilns["gas"], tariff: new(0.1, "GBP")).Answer.Kiln!;
        Assert.Null(kiln.Cost!.Amount);
        Assert.Equal(kiln.Fuel!.LowerBoundKilowattHours * 1.5 * 0.1, kiln.Cost.Low, 0.1);
    }

    [Fact]
    public void Witness_cones_are_whole_cones_around_the_target()
    {
        Assert.Equal(("07", "06", "05"), Witnesses(Fits.Fit("bisque-mixed-ware", "06").Answer));
        Assert.Equal(("5", "5.5", "6"), Witnesses(Fits.Fit("mid-range-glaze", "5.5").Answer));
        Assert.Equal(("02", "01", "1"), Witnesses(Fits.Fit("bisque-textbook-1914", "01").Answer));
    }

    // Source: chart witness-self-supporting at 60 °C/h: 1 at 1137, 2 at 1142, 3 at 1152, 4 at 1162, 5 at 1186 °C. A guard ends at least
    // 12 °C above its target (heat-work specification, section 3), so none of these takes its neighbour.
    [Theory]
    [InlineData("1", "3")]
    [InlineData("2", "4")]
    public void A_guard_that_is_too_near_is_passed_over(string target, string guard)
    {
        var schedule = Fits.Fitter.Catalogue.Schedules.First(s => s.EndCone is not null && s.Takes(Cone.Parse(target))).Id;
        Assert.Equal(guard, Fits.Fit(schedule, target).Answer.WitnessCones!.Guard);
    }

    [Fact]
    public void Landmarks_come_in_the_order_in_which_the_ware_passes_them()
    {
        var marks = Fits.Fit("bisque-careful", "06", Fits.Kilns["small"]).Answer.Landmarks;
        Assert.Equal(marks.OrderBy(m => m.FromMinutes), marks);
        Assert.Equal(
            ["free-water", "organics", "bound-water-kaolin", "quartz-up", "carbon-sulphur", "quartz-down", "cristobalite-inv", "unload"],
            marks.Select(m => m.Id));
    }

    [Theory]
    [InlineData("2026-12-04T18:00:00", "start-without-offset")]
    [InlineData("2026-12-04", "start-without-offset")]
    [InlineData("tomorrow", "start-unreadable")]
    [InlineData("2026-02-30T18:00:00Z", "start-unreadable")]
    public void A_start_must_be_a_moment(string start, string code) =>
        Assert.Equal(
            [code], Assert.Throws<RefusedException>(() => Fits.Fit("bisque-careful", "06", start: start)).Findings.Select(f => f.Code));

    [Fact]
    public void Every_default_that_the_computation_asks_for_is_in_the_package() =>
        Assert.All(
            [
                "cooling-limit-thickness", "drying-hold-glaze", "drying-hold-leather-hard", "drying-hold-most",
                "drying-hold-per-millimetre", "drying-hold-thin", "drying-hold-wet", "drying-temperature",
                "drying-thickness", "fired-wall-difference",
                "kiln-cooling-rate", "last-ramp-span", "loading-minutes", "start-temperature",
            ],
            id => Assert.Contains(Reference.Dataset.ScheduleDefaults, d => d.Id == id));

    private static (string?, string, string?) Witnesses(ScheduleFit fit) =>
        (fit.WitnessCones!.Guide, fit.WitnessCones.Target, fit.WitnessCones.Guard);
}
