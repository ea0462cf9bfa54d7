using ConeService.Data;
using ConeService.Firing.Tests.Support;

namespace ConeService.Firing.Tests.Schedules;

/// <summary>Numbers that one can type: rates and targets in fives (°F: tens), the peak in whole degrees, holds in five minutes.</summary>
public class ControllerGridTests
{
    public static TheoryData<string, string, string?> Combinations
    {
        get
        {
            var data = new TheoryData<string, string, string?>();
            foreach (var schedule in Fits.Fitter.Catalogue.Schedules)
            {
                foreach (var units in (string[])["C", "F"])
                {
                    data.Add(schedule.Id, units, null);
                    data.Add(schedule.Id, units, "small");
                }
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Combinations))]
    public void Every_number_is_on_the_grid(string id, string units, string? kiln)
    {
        var schedule = Fits.Fitter.Catalogue.Find(id);
        var cones = Reference.Charts.Default.Cones.Where(c => schedule.Takes(c.Cone)).Select(c => (string?)c.Cone.ToString()).ToList();
        foreach (var cone in cones.Count > 0 ? cones : [null])
        {
            var fit = Fits.Fit(id, cone, kiln is null ? null : Fits.Kilns[kiln], new(ThickestMillimetres: 23), units).Answer;
            var step = units == "F" ? 10 : 5;
            // Soda ends two ramps at a cone: both peaks are in whole degrees.
            var peaks = fit.Segments.Where(s => s.Stage is FiringStage.Maturing or FiringStage.Vapour or FiringStage.CleanUp).ToList();
            foreach (var segment in fit.Segments)
            {
                var rate = units == "F" ? segment.RateFahrenheitPerHour : segment.RateCelsiusPerHour;
                var target = units == "F" ? segment.TargetFahrenheit : segment.TargetCelsius;
                Assert.True((rate ?? 0) % step == 0, $"{id}, {cone}: {segment.InWords}");
                Assert.True(segment.HoldMinutes % 5 == 0, $"{id}, {cone}: {segment.InWords}");
                var peak = units == "F" ? fit.PeakFahrenheit : fit.PeakCelsius;
                Assert.True(target % (peaks.Contains(segment) || target == peak ? 1 : step) == 0,
                    $"{id}, {cone}: {segment.InWords}");
            }
        }
    }

    [Fact]
    public void A_segment_says_how_long_its_ramp_takes()
    {
        // 50 °C/h from 20 to 90 °C: 84 minutes.
        var fit = Fits.Fit("bisque-careful", "06").Answer;
        Assert.Equal(84, fit.Segments[0].RampMinutes);
    }
}
