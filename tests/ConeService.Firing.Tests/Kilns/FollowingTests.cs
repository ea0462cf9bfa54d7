using ConeService.Contract.Kilns;
using ConeService.Data;
using ConeService.Firing.Kilns;

namespace ConeService.Firing.Tests.Kilns;

public class FollowingTests
{
    [Fact]
    public void A_kiln_with_power_to_spare_keeps_to_the_clock()
    {
        var prediction = KilnCases.Model.Predict(KilnCases.Glazed(16), KilnCases.Plan("100:1000:0;60:1222:0.25"));
        Assert.All(prediction.Segments, s => Assert.Equal(Following.Follows, s.Following));
        // By hand: 980/100 + 222/60 = 13.5 h, and a quarter of an hour more.
        Assert.Equal(13.5, prediction.HoursToPeak, 3);
        Assert.Equal(13.75, prediction.HoursToEnd, 9);
        Assert.Equal(1222, prediction.PeakCelsius, 2);
    }

    [Fact]
    public void A_weak_kiln_comes_late_and_says_from_where()
    {
        var prediction = KilnCases.Model.Predict(KilnCases.Glazed(7), KilnCases.Plan("100:1000:0;60:1222:0.25"));
        Assert.True(prediction.Completed);
        Assert.All(prediction.Segments, s => Assert.Equal(Following.TooSlow, s.Following));
        Assert.All(prediction.Segments, s => Assert.InRange(s.FollowsToCelsius!.Value, s.StartCelsius, s.EndCelsius));
        Assert.All(prediction.Segments, s => Assert.True(s.EndHours - s.StartHours > s.PlannedHours));
        Assert.True(prediction.Segments[1].LastRateCelsiusPerHour < 60);
        Assert.Equal(1222, prediction.PeakCelsius, 1);
    }

    [Fact]
    public void The_rate_at_which_a_late_ramp_ended_can_be_followed()
    {
        var late = KilnCases.Model.Predict(KilnCases.Glazed(7), KilnCases.Plan("100:1000:0;60:1222:0.25")).Segments;
        var programme = late.Select((s, i) => new KilnSegment(Math.Floor(s.LastRateCelsiusPerHour!.Value), i == 0 ? 1000 : 1222));
        var slower = KilnCases.Model.Predict(KilnCases.Glazed(7), new([.. programme]));
        Assert.All(slower.Segments, s => Assert.Equal(Following.Follows, s.Following));
    }

    [Fact]
    public void A_kiln_that_cannot_get_there_stalls_and_cools()
    {
        var prediction = KilnCases.Model.Predict(KilnCases.Glazed(3.5), KilnCases.Plan("100:1000:0;60:1222:0.25"));
        Assert.False(prediction.Completed);
        Assert.Equal([Following.Stalls, Following.NotRun], prediction.Segments.Select(s => s.Following));
        Assert.Null(prediction.Segments[0].RampEndHours);
        Assert.InRange(prediction.PeakCelsius, 500, 1000);
        Assert.Equal(prediction.PeakCelsius, prediction.Segments[0].EndCelsius, 1);
        Assert.NotNull(prediction.HoursToOpening);
    }

    [Fact]
    public void A_kiln_cools_no_faster_than_it_can()
    {
        var prediction = KilnCases.Model.Predict(KilnCases.Glazed(16), KilnCases.Plan("100:1222:0;500:1050:0.5;30:900:0"));
        Assert.Equal([Following.Follows, Following.CoolsSlower, Following.Follows], prediction.Segments.Select(s => s.Following));
        Assert.True(prediction.Energy.AfterPeakKilowattHours > 0);
    }

    [Fact]
    public void Steaming_ware_is_late_and_no_stall()
    {
        var setup = KilnCases.Model.Resolve(new(KilnHeat.Electric, 198, Kilowatts: 4), new(80, 20, Dryness: Dryness.Wet));
        var prediction = KilnCases.Model.Predict(setup, KilnCases.Plan("100:400:0"));
        Assert.True(prediction.Completed);
        Assert.Equal(Following.TooSlow, prediction.Segments[0].Following);
    }

    [Fact]
    public void More_load_less_power_or_a_thinner_wall_never_come_earlier_or_cheaper()
    {
        var plan = KilnCases.Plan("120:1100:0.2");
        var usual = KilnCases.Model.Predict(KilnCases.Glazed(9), plan);
        var (heavy, light) = (new KilnLoad(60, 40, Ware: WareStage.Bisqued), new KilnLoad(40, 30, Ware: WareStage.Bisqued));
        var full = KilnCases.Model.Predict(KilnCases.Model.Resolve(new(KilnHeat.Electric, 198, Kilowatts: 9), heavy), plan);
        var thinWall = new StatedKiln(KilnHeat.Electric, 198, Wall: new(null, 64), Kilowatts: 9);
        var thin = KilnCases.Model.Predict(KilnCases.Model.Resolve(thinWall, light), plan);
        Assert.True(full.Energy.TotalKilowattHours > usual.Energy.TotalKilowattHours && full.HoursToPeak >= usual.HoursToPeak);
        Assert.True(thin.Energy.SurfaceKilowattHours > usual.Energy.SurfaceKilowattHours && thin.HoursToOpening < usual.HoursToOpening);
        Assert.True(KilnCases.Model.Predict(KilnCases.Glazed(7), plan).HoursToPeak > usual.HoursToPeak);
    }

    [Fact]
    public void The_histories_are_the_curve_to_a_tenth_of_a_kelvin()
    {
        var prediction = KilnCases.Model.Predict(KilnCases.Glazed(7), KilnCases.Plan("100:1000:0;60:1222:0.25;150:900:0.5"));
        foreach (var sample in prediction.Curve)
        {
            Assert.Equal(sample.ChamberCelsius + 273.15, At(prediction.Chamber, sample.Hours), 0.101);
            Assert.Equal(sample.LoadCelsius + 273.15, At(prediction.Load, sample.Hours), 0.101);
        }

        Assert.Equal(prediction.HoursToOpening, prediction.Chamber.End.Hours);
        Assert.True(prediction.Chamber.Points.Length < prediction.Curve.Count);

        static double At(ConeService.Firing.HeatWork.HeatHistory history, double hours)
        {
            var points = history.Points;
            var i = 1;
            while (i < points.Length - 1 && points[i].Hours < hours) i++;
            var (a, b) = (points[i - 1], points[i]);
            return a.Kelvin + ((hours - a.Hours) / (b.Hours - a.Hours) * (b.Kelvin - a.Kelvin));
        }
    }

    [Fact]
    public void A_plan_above_the_maker_s_limit_is_remarked()
    {
        var setup = KilnCases.Model.Resolve(new(KilnHeat.Electric, 100, MaxCelsius: 1200));
        Assert.True(KilnCases.Model.Predict(setup, KilnCases.Plan("100:1222:0")).ExceedsMaker);
        Assert.False(KilnCases.Model.Predict(setup, KilnCases.Plan("100:1200:0")).ExceedsMaker);
    }
}
