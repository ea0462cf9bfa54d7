using ConeService.Contract.Answers;
using ConeService.Contract.Kilns;
using ConeService.Contract.Schedules;

namespace ConeService.Firing.Tests.Schedules;

/// <summary>Walls of ordinary thickness, and flatware; expected figures by hand from the tables thickness-limits and landmarks.</summary>
public class FlatWareTests
{
    // landmarks: quartz-up, slow from 500 to 650 °C for large or flat ware.
    private const double SlowFrom = 500;
    private const double SlowTo = 650;

    // The trade bisques mugs of 12 mm in a working day and a night at most: the template's 11 hours may become 15, never 20.
    [Theory]
    [InlineData(12)]
    [InlineData(10)]
    [InlineData(9)]
    public void An_ordinary_wall_does_not_turn_a_twelve_hour_bisque_into_twenty(double thickness)
    {
        var hours = Hours(Fit(new(ThickestMillimetres: thickness, Dryness: "bone-dry")));
        Assert.InRange(Hours(Fit(new(ThickestMillimetres: 8))), 10, 13);
        Assert.InRange(hours, Hours(Fit(new(ThickestMillimetres: 8))), 15);
    }

    // Steam and burn-out limit a wall of 12 mm, where the landmarks say that they happen: free water leaves up to 120 °C, carbon burns
    // from 700 °C on. By hand, ln-ln at 12 mm: steam 50·0.6^(ln 1.2/ln 5) = 47.2, burn-out 80·0.625^0.1133 = 75.9. Bound water: the
    // template's 100, which is what the landmark bound-water-kaolin allows.
    [Fact]
    public void Steam_and_burn_out_limit_an_ordinary_wall_and_nothing_else_does()
    {
        var fit = Fit(new(ThickestMillimetres: 12, Dryness: "bone-dry"));
        Assert.InRange(RateAt(fit, 110), 40, 47.2);
        Assert.Equal(80, RateAt(fit, 150));
        Assert.Equal(100, RateAt(fit, 400));
        Assert.InRange(RateAt(fit, 800), 70, 75.9);
    }

    // No wall is a cliff: a millimetre more is at most a fifth more time. Ramps of nearly one rate are one segment at the slower one, so
    // that a thicker wall, whose ramps differ more, may save a twentieth.
    [Fact]
    public void Times_rise_smoothly_with_the_wall()
    {
        var before = Hours(Fit(new(ThickestMillimetres: 8)));
        foreach (var thickness in Enumerable.Range(9, 42))
        {
            var hours = Hours(Fit(new(ThickestMillimetres: thickness)));
            Assert.True(hours >= 0.95 * before, $"{thickness} mm: {hours} h after {before}");
            Assert.True(hours < 1.2 * before, $"{thickness} mm: {hours} h after {before}");
            before = hours;
        }
    }

    // ΔT = r·L²/(2α): heated from one side L is the thickness and no longer half of it, so that a plate of 6 mm is as slow as a wall of 12.
    [Fact]
    public void Flatware_is_as_slow_as_a_wall_of_twice_its_thickness()
    {
        var plate = Fit(new(ThickestMillimetres: 6, Form: "flat"));
        var wall = Fit(new(ThickestMillimetres: 12));
        foreach (var celsius in new[] { 50, 95, 110, 150, 300, 800, 880 })
            Assert.Equal(RateAt(wall, celsius), RateAt(plate, celsius));
    }

    // landmarks: quartz-up, slow from 500 to 650 °C for flat ware; the rate is the 100 °C/h at most of bound-water-kaolin.
    [Theory]
    [InlineData("bisque-thin-ware", "06", 4.0)]
    [InlineData("mid-range-glaze", "6", 6.0)]
    [InlineData("mid-range-glaze", "6", null)]
    public void Flatware_goes_slowly_through_the_quartz_inversion_however_thin(string schedule, string cone, double? thickness)
    {
        var hollow = Fits.Fit(schedule, cone, load: new(ThickestMillimetres: thickness)).Answer;
        Assert.True(RateAt(hollow, 575) > 100);
        var flat = Fits.Fit(schedule, cone, load: new(ThickestMillimetres: thickness, Form: "flat")).Answer;
        for (var celsius = SlowFrom + 1; celsius < SlowTo; celsius += 10) Assert.True(RateAt(flat, celsius) <= 100, $"at {celsius} °C");
        var change = string.Join(' ', flat.Changes.Where(c => c.Code == FitChangeCode.SlowedForThickness).Select(c => c.Message));
        Assert.Contains("flatware", change, StringComparison.Ordinal);
        Assert.Contains("quartz", change, StringComparison.Ordinal);
        Assert.Contains(" more", change, StringComparison.Ordinal);
    }

    // landmarks: quartz-down, at most 50 °C/h; a small kiln of fibre cools faster there by itself.
    [Fact]
    public void Flatware_is_cooled_slowly_through_the_quartz_inversion()
    {
        var kiln = new Kiln("drum", "electric", VolumeLitres: 20, Wall: new("ceramic-fibre", 50), Kilowatts: 4);
        var load = new FitLoad(ThickestMillimetres: 6, KilogramsWare: 3, KilogramsFurniture: 2);
        Assert.DoesNotContain(
            Fits.Fit("mid-range-glaze", "6", kiln, load).Answer.Changes, c => c.Code == FitChangeCode.CoolingForThickness);
        var fit = Fits.Fit("mid-range-glaze", "6", kiln, load with { Form = "flat" }).Answer;
        Assert.Equal((50m, 500m), (fit.Segments[^1].RateCelsiusPerHour, fit.Segments[^1].TargetCelsius));
        Assert.Equal((null, 650m), (fit.Segments[^2].RateCelsiusPerHour, fit.Segments[^2].TargetCelsius));
        var change = fit.Changes.Single(c => c.Code == FitChangeCode.CoolingForThickness).Message.ToString();
        Assert.Contains("flatware", change, StringComparison.Ordinal);
        Assert.Contains("dunting", change, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_slowing_says_what_it_buys_and_costs()
    {
        var change = Fit(new(ThickestMillimetres: 25)).Changes.First(c => c.Code == FitChangeCode.SlowedForThickness).Message.ToString();
        Assert.Contains("so that", change, StringComparison.Ordinal);
        Assert.Contains(" min more", change, StringComparison.Ordinal);
    }

    [Fact]
    public void A_form_left_out_is_said_and_an_unknown_one_asked_back()
    {
        Assert.Contains(Fit(new()).Assumed, a => (a.Pointer, a.Value) == ("/load/form", "hollow"));
        var finding = Assert.Single(Assert.Throws<RefusedException>(() => Fit(new(Form: "flatt"))).Findings);
        Assert.Equal(("word-unknown", "/load/form", "flatt"), (finding.Code, finding.Field, finding.Value));
    }

    private static ScheduleFit Fit(FitLoad load) => Fits.Fit("bisque-mixed-ware", "06", load: load).Answer;

    private static double Hours(ScheduleFit fit) => fit.ProgrammeMinutes / 60;

    private static double RateAt(ScheduleFit fit, double celsius)
    {
        var from = (double)fit.Programme.Start;
        foreach (var segment in fit.Segments)
        {
            var to = (double)segment.TargetCelsius;
            if (celsius >= from && celsius < to) return (double)(segment.RateCelsiusPerHour ?? segment.TakenRateCelsiusPerHour)!.Value;
            from = to;
        }

        return double.PositiveInfinity;
    }
}
