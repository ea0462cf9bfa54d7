using System.Collections.Concurrent;
using ConeService.Contract.Kilns;
using ConeService.Contract.Schedules;
using ConeService.Firing.Tests.Support;

namespace ConeService.Firing.Tests.Schedules;

/// <summary>The cone is met by the curve of the kiln, not by that of the programme.</summary>
public class ClosedLoopTests
{
    private static readonly IReadOnlyDictionary<string, Kiln> Kilns = new Dictionary<string, Kiln>(Fits.Kilns)
    {
        // 8 kW × (208/240)² ÷ 1.1 = 5.46 kW for 150 L: weak; 3 kW for 150 L are too weak for a high fire.
        ["weak"] = new("weak", "electric", VolumeLitres: 150, Kilowatts: 8, VoltsInstalled: 240, VoltsAsWired: 208, ElementAge: 1),
        ["too-weak"] = new("too weak", "electric", VolumeLitres: 150, Kilowatts: 3),
    };

    // The two tests of all templates ask for the same hundreds of fits.
    private static readonly ConcurrentDictionary<(string Id, string Cone, string Kiln), ScheduleFit> Fitted = new();

    public static TheoryData<string, string> Combinations
    {
        get
        {
            var data = new TheoryData<string, string>();
            foreach (var schedule in Fits.Fitter.Catalogue.Schedules.Where(s => s.EndCone is not null))
            {
                foreach (var kiln in Kilns.Keys) data.Add(schedule.Id, kiln);
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Combinations))]
    public void The_predicted_curve_meets_the_cone_or_the_answer_says_what_happens_instead(string id, string kiln)
    {
        var schedule = Fits.Fitter.Catalogue.Find(id);
        foreach (var cone in Reference.Charts.Default.Cones.Where(c => schedule.Takes(c.Cone)).Select(c => c.Cone.ToString()))
        {
            var fit = Fit(id, cone, kiln);
            Assert.Equal(fit.HeatWork.TargetProgress, fit.Kiln!.HeatWork.TargetProgress);
            if (fit.WhyNot is not null) continue;
            Assert.True(
                Math.Abs(fit.HeatWork.TargetProgress!.Value - 1) <= 0.05 && (fit.HeatWork.NextProgress ?? 0) < 1,
                $"{id}, {cone}, {kiln}: {fit.HeatWork.TargetProgress}, next {fit.HeatWork.NextProgress}");
        }
    }

    // What a kiln can't do may be said of few, or the test above would prove nothing: of kilns strong enough for any cone, as 8 kW for
    // 74 L, next to none. The one that is too weak loses 4 kW at 1000 °C and has 3: there a reason is the rule.
    [Theory]
    [InlineData("small", 0.05)]
    [InlineData("large", 0.05)]
    [InlineData("gas", 0.05)]
    [InlineData("weak", 0.5)]
    public void Few_fits_end_in_a_reason_why_not(string kiln, double share)
    {
        var (all, not) = (0, new List<string>());
        foreach (var schedule in Fits.Fitter.Catalogue.Schedules.Where(s => s.EndCone is not null))
        {
            foreach (var cone in Reference.Charts.Default.Cones.Where(c => schedule.Takes(c.Cone)).Select(c => c.Cone.ToString()))
            {
                all++;
                if (Fit(schedule.Id, cone, kiln).WhyNot is { } why) not.Add($"{schedule.Id} {cone}: {why}");
            }
        }

        Assert.True(not.Count <= share * all, $"{not.Count} of {all}:\n{string.Join('\n', not)}");
    }

    [Fact]
    public void A_weak_kiln_that_lags_still_meets_its_cone()
    {
        var fit = Fits.Fit("mid-range-glaze", "6", Kilns["weak"], new(KilogramsWare: 30, KilogramsFurniture: 15)).Answer;
        Assert.Null(fit.WhyNot);
        Assert.False(fit.Kiln!.CanFollow);
        Assert.InRange(fit.HeatWork.TargetProgress!.Value, 0.95, 1.05);
    }

    // Slowing the whole ramp would cost hours where the kiln does follow: only the part in which it lags is slowed.
    [Fact]
    public void A_ramp_is_split_where_the_lag_begins()
    {
        var fit = Fits.Fit("mid-range-glaze", "6", Kilns["weak"], new(KilogramsWare: 30, KilogramsFurniture: 15)).Answer;
        var remedy = fit.Kiln!.Remedies.Single(r => r.Code == "slower-ramps");
        Assert.True(remedy.Programme!.Segments.Count > fit.Segments.Count);
        Assert.InRange(fit.Segments[1].RateCelsiusPerHour!.Value, 165, 175);
        Assert.Contains(remedy.Programme.Segments, s => s.Rate == fit.Segments[1].RateCelsiusPerHour);
        Assert.True(remedy.EndMinutes > 0 && remedy.EnergyKilowattHours > 0);
    }

    // The cone is down all the same, with a hold longer than the programme's own below its peak.
    [Fact]
    public void A_kiln_that_lags_is_offered_a_longer_hold()
    {
        var fit = Fits.Fit("mid-range-glaze", "6", Kilns["weak"], new(KilogramsWare: 30, KilogramsFurniture: 15)).Answer;
        var held = Remedy(fit, "longer-hold", "6").Segments;
        Assert.True(held.Max(s => s.Target) < fit.PeakCelsius);
        Assert.True(held.MaxBy(s => s.Target)!.HoldMinutes > fit.Segments.MaxBy(s => s.TargetCelsius)!.HoldMinutes);
    }

    // 5.46 kW lose 4 at 1000 °C: 200 °C/h from 645 °C on is too fast, and 100 °C before the peak is where charts begin to count.
    [Fact]
    public void A_kiln_that_lags_at_the_end_is_offered_a_slower_end()
    {
        var fit = Fits.Fit("bisque-stepped", "06", Kilns["weak"], new(KilogramsWare: 30, KilogramsFurniture: 15)).Answer;
        var end = Remedy(fit, "slower-end", "06").Segments;
        Assert.Equal(fit.Segments.Count + 1, end.Count);
        var peak = end.ToList().FindIndex(s => s.Target == end.Max(x => x.Target));
        Assert.InRange(end[peak].Target - end[peak - 1].Target, 80, 120);
        Assert.True(end[peak].Rate < end[peak - 1].Rate);
    }

    private static ScheduleFit Fit(string id, string cone, string kiln) =>
        Fitted.GetOrAdd((id, cone, kiln), k => Fits.Fit(k.Id, k.Cone, Kilns[k.Kiln]).Answer);

    private static FittedProgramme Remedy(ScheduleFit fit, string code, string cone)
    {
        var remedy = fit.Kiln!.Remedies.Single(r => r.Code == code);
        Assert.True(remedy is { Programme: not null, CanFollow: not null, EndMinutes: > 0, EnergyKilowattHours: > 0 });
        Assert.StartsWith(cone + " ", remedy.Reading!.ToString(), StringComparison.Ordinal);
        return remedy.Programme!;
    }

    [Fact]
    public void A_kiln_that_stalls_is_offered_a_lower_peak_or_a_lighter_load_with_hours_energy_and_reading()
    {
        var kiln = new Kiln("tired", "electric", VolumeLitres: 150, Kilowatts: 5.2);
        var fit = Fits.Fit("high-fire-oxidation", "10", kiln, new(KilogramsWare: 45, KilogramsFurniture: 30)).Answer;
        Assert.False(fit.Kiln!.CanFollow);
        var lighter = fit.Kiln.Remedies.Single(r => r.Code == "lighter-load");
        Assert.NotNull(lighter.Programme);
        Assert.All(
            fit.Kiln.Remedies.Where(r => r.Programme is not null),
            r => Assert.True(r is { EndMinutes: > 0, EnergyKilowattHours: > 0, Reading: not null, CanFollow: not null }));
    }

    // A small kiln asked to fall at 600 °C/h: it can't, and nothing needs doing.
    [Fact]
    public void A_lag_in_cooling_is_told_and_is_no_failure_to_follow()
    {
        var kiln = new Kiln("large", "electric", VolumeLitres: 300, Wall: new("insulating-firebrick", 230), Kilowatts: 40);
        var fit = Fits.Fit("mid-range-glaze-crystal-cooling", "6", kiln, new(KilogramsWare: 60, KilogramsFurniture: 60)).Answer;
        Assert.Contains(fit.Kiln!.Segments, s => s.Following == Following.CoolsSlower);
        Assert.True(fit.Kiln.CanFollow);
        Assert.NotNull(fit.Kiln.Instead);
    }
}
