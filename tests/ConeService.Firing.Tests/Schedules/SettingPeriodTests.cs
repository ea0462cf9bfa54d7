using ConeService.Contract.Kilns;
using ConeService.Data;
using ConeService.Firing.Schedules;
using ConeService.Firing.Tests.Support;

namespace ConeService.Firing.Tests.Schedules;

/// <summary>Vents, dampers and atmosphere stand where the template says, however few segments a controller holds.</summary>
public class SettingPeriodTests
{
    private const double Near = 5;

    public static TheoryData<string, int, string> Combinations
    {
        get
        {
            var data = new TheoryData<string, int, string>();
            foreach (var schedule in Fits.Fitter.Catalogue.Schedules)
            {
                foreach (var size in (int[])[2, 3, 4, 8, 0])
                {
                    data.Add(schedule.Id, size, "C");
                    data.Add(schedule.Id, size, "F");
                }
            }

            return data;
        }
    }

    // data/schedule-segments.csv, bisque-thick: vents open through segments 1 to 5, to 900 °C.
    [Theory]
    [InlineData("bisque-thick", 4, "electric")]
    [InlineData("bisque-thick", 2, "electric")]
    [InlineData("bisque-careful", 2, "electric")]
    [InlineData("bisque-mixed-ware", 3, "electric")]
    [InlineData("single-fire", 2, "electric")]
    public void Vents_stay_open_to_the_end_of_the_burn_out(string id, int size, string heat)
    {
        var cone = id == "single-fire" ? "6" : "06";
        var kiln = new Kiln("few", heat, VolumeLitres: 150, Kilowatts: 14, ControllerSegments: size);
        var fit = Fits.Fit(id, cone, kiln, new(ThickestMillimetres: 30)).Answer;
        var open = Assert.Single(fit.Times.Vents);
        Assert.Equal((VentSetting.Open, 900.0), (open.Vent, open.ToCelsius));
        var within = fit.Segments.SelectMany(s => s.Settings).Last(s => s.Vent == VentSetting.Open);
        Assert.Equal(900, within.UntilCelsius, Near);
    }

    // data/schedule-segments.csv, soda: damper in for the vapour only, from cone 8 to 9 until cone 9 is down; reduction from 870 °C on.
    [Fact]
    public void Soda_keeps_its_damper_and_its_reduction_with_three_segments()
    {
        var fit = Fits.Fit("soda", "10", new("few", "wood", ControllerSegments: 3)).Answer;
        Assert.Contains(fit.Times.Vents, v => v.Vent == VentSetting.DamperIn && Math.Abs(v.FromCelsius - 1220) <= Near);
        Assert.Equal(870, fit.Times.Settings.First(s => s.Atmosphere == Atmosphere.Reduction).FromCelsius, Near);
    }

    [Theory]
    [MemberData(nameof(Combinations))]
    public void Every_setting_stands_where_the_template_has_it(string id, int size, string units)
    {
        var schedule = Fits.Fitter.Catalogue.Find(id);
        foreach (var cone in Cones(schedule))
        {
            var kiln = size == 0 ? null : new Kiln("few", "wood", ControllerSegments: size);
            var fit = Fits.Fit(id, cone, kiln, units: units).Answer;
            var periods = fit.Times.Settings;
            Assert.Equal(0, periods[0].FromMinutes);
            Assert.All(periods.Zip(periods.Skip(1)), p => Assert.Equal(p.First.ToMinutes, p.Second.FromMinutes));
            foreach (var row in schedule.Segments.Where(s => s.TargetCelsius is not null && s.Stage != FiringStage.PostFiring))
            {
                // Halfway up to a target of the template, its setting stands.
                var from = row.Number == 1 ? 20 : (double?)schedule.Segments[row.Number - 2].TargetCelsius;
                var to = (double)row.TargetCelsius!;
                if (from is not { } low || low >= to || to > (double)fit.PeakCelsius - 20) continue;
                foreach (var celsius in (double[])[low + Near, (low + to) / 2, to - Near])
                {
                    if (fit.Segments[0].TemplateSegments.Count == 0 && celsius < 100) continue;
                    var standing = periods.First(p => p.FromCelsius <= celsius && (p.Cooling || p.ToCelsius > celsius));
                    Assert.True(
                        (standing.Vent, standing.VentNote, standing.Atmosphere, standing.AtmosphereNote)
                        == (row.Vent, row.VentNote, row.Atmosphere, row.AtmosphereNote),
                        $"{id}, cone {cone}, {size} segments: {standing} at {celsius} °C");
                    var segment = fit.Segments.First(s => (double)s.TargetCelsius > celsius).Settings.First(s => s.UntilCelsius > celsius);
                    Assert.Equal((row.Vent, row.Atmosphere), (segment.Vent, segment.Atmosphere));
                }
            }
        }
    }

    private static IEnumerable<string?> Cones(Schedule schedule)
    {
        if (schedule.EndCone is null) yield return null;
        foreach (var cone in Reference.Charts.Default.Cones.Where(c => schedule.Takes(c.Cone))) yield return cone.Cone.ToString();
    }
}
