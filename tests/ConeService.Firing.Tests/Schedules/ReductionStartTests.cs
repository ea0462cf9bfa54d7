using ConeService.Data;

namespace ConeService.Firing.Tests.Schedules;

/// <summary>
/// Cautions of the data package: do not reduce below about 750 °C (carbon-monoxide); start reduction at 860 to 900 °C
/// (explosive-reduction, pitelka-2001).
/// </summary>
public class ReductionStartTests
{
    public static TheoryData<string, int> Combinations
    {
        get
        {
            var data = new TheoryData<string, int>();
            foreach (var schedule in Fits.Fitter.Catalogue.Schedules)
            {
                foreach (var size in (int[])[2, 3, 4, 8]) data.Add(schedule.Id, size);
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Combinations))]
    public void No_fit_reduces_below_860_degrees(string id, int size)
    {
        var cone = Fits.Fitter.Catalogue.Find(id).EndCone?.ToString();
        var fit = Fits.Fit(id, cone, new("few", "wood", ControllerSegments: size)).Answer;
        Assert.All(
            fit.Times.Settings.Where(s => s.Atmosphere == Atmosphere.Reduction),
            s => Assert.True(s is { FromCelsius: >= 860, ToCelsius: >= 860 }, $"{id}, {size} segments: {s}"));
    }

    [Fact]
    public void Salt_climbs_in_oxidation_until_its_body_reduction()
    {
        var fit = Fits.Fit("salt", "9").Answer;
        Assert.Equal(870, fit.Times.Settings.First(s => s.Atmosphere == Atmosphere.Reduction).FromCelsius);
    }
}
