using ConeService.Contract.Answers;
using ConeService.Contract.Schedules;
using ConeService.Data;
using ConeService.Firing.Schedules;

namespace ConeService.Firing.Tests.Schedules;

/// <summary>
/// Ware that is not dry is candled, practice of the trade: no faster than 30 to 50 °C/h to 80 °C, eight hours when wet and four when
/// leather-hard, longer for thick walls (schedule-defaults); or the schedule is refused.
/// </summary>
public class WetWareTests
{
    public static TheoryData<string, string> Combinations
    {
        get
        {
            var data = new TheoryData<string, string>();
            foreach (var schedule in Fits.Fitter.Catalogue.Schedules)
            {
                data.Add(schedule.Id, "wet");
                data.Add(schedule.Id, "leather-hard");
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Combinations))]
    public void Damp_ware_is_candled_first_or_refused(string id, string dryness)
    {
        var schedule = Fits.Fitter.Catalogue.Find(id);
        var load = new FitLoad(Dryness: dryness, ThickestMillimetres: 8);
        if (!schedule.TakesGreenware || schedule.Row.Kind == FiringKind.Pit)
        {
            var finding = Refused(schedule, load);
            Assert.Equal(("ware-not-dry", "/load/dryness"), (finding.Code, finding.Field));
            return;
        }

        foreach (var size in (int[])[2, 4, 99])
        {
            var fit = Fits.Fit(id, schedule.EndCone?.ToString(), new("few", "wood", ControllerSegments: size), load).Answer;
            var (first, hold) = (fit.Segments[0], dryness == "wet" ? 480 : 240);
            Assert.True(first.RateCelsiusPerHour <= 50 && first.TargetCelsius <= 80 && first.HoldMinutes >= hold, $"{id}: {first.InWords}");
            Assert.Contains(fit.Changes, c => c.Code is FitChangeCode.DryingAdded or FitChangeCode.DryingLengthened);
        }
    }

    [Theory]
    [InlineData(180, "bone-dry")]
    [InlineData(70, "wet")]
    public void Green_ware_is_not_set_into_a_hot_kiln(double start, string dryness)
    {
        var refused = Assert.Throws<RefusedException>(() =>
            Fits.Fit("bisque-careful", "06", load: new(Dryness: dryness), startTemperature: start));
        var finding = Assert.Single(refused.Findings);
        Assert.Equal(("start-too-hot", "/startTemperature"), (finding.Code, finding.Field));
    }

    [Theory]
    [InlineData("mid-range-glaze", "6", 180)]
    [InlineData("low-fire-glaze-stepped", "05", 200)]
    [InlineData("candle", null, 95)]
    [InlineData("bisque-careful", "06", 95)]
    [InlineData("high-fire-oxidation", "10", 121)]
    public void A_hot_start_never_heats_downwards(string id, string? cone, double start)
    {
        var fit = Fits.Fit(id, cone, Fits.Kilns["small"], load: new(Dryness: "bone-dry"), startTemperature: start).Answer;
        var from = (decimal)start;
        foreach (var segment in fit.Segments.TakeWhile(s => s.Stage is not (FiringStage.SlowCooling or FiringStage.CrashCooling)))
        {
            Assert.True(segment.TargetCelsius >= from, $"{segment.InWords} from {from}");
            from = segment.TargetCelsius;
        }
    }

    // Below freezing a kiln in a shed starts at the temperature of its room.
    [Fact]
    public void The_room_is_an_input_of_its_own()
    {
        var cold = Fits.Fit("mid-range-glaze", "6", Fits.Kilns["small"], roomTemperature: -10).Answer;
        Assert.Equal(-10, cold.Programme.Start);
        Assert.Contains(cold.Assumed, a => a.Field == "/startTemperature" && a.Value == "-10 °C");
        var mild = Fits.Fit("mid-range-glaze", "6", Fits.Kilns["small"], roomTemperature: 35).Answer;
        Assert.True(cold.Kiln!.Energy.TotalKilowattHours > mild.Kiln!.Energy.TotalKilowattHours);
        Assert.True(cold.Kiln.OpeningMinutes < mild.Kiln.OpeningMinutes);
    }

    private static Finding Refused(Schedule schedule, FitLoad load) => Assert.Single(
        Assert.Throws<RefusedException>(() => Fits.Fit(schedule.Id, schedule.EndCone?.ToString(), load: load)).Findings);
}
