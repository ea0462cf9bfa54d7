using ConeService.Contract.Answers;
using ConeService.Contract.Schedules;
using ConeService.Firing.Schedules.Fitting.Starting;

namespace ConeService.Firing.Tests.Schedules;

/// <summary>The start of a firing chosen backwards from its end, from its peak, or by what energy costs at which hour.</summary>
public class StartTests
{
    private const string Friday = "2026-12-04T17:07:00+01:00";

    private static readonly TariffPeriod Night = new("22:00", "06:00", null, 0.18);

    private static readonly FitTariff TwoRates = new(0.36, "EUR", [Night]);

    private static readonly FitTariff Weekend = new(
        0.36, "EUR", [new("00:00", "24:00", ["saturday", "sunday"], 0.25), Night, new("17:00", "20:00", ["friday"], 0.55)]);

    /// <summary>Template, cone, kiln, tariff.</summary>
    public static TheoryData<string, string, string, bool> Tariffs => new()
    {
        { "bisque-thin-ware", "06", "small", false },
        { "mid-range-glaze", "6", "large", false },
        { "bisque-careful", "04", "small", true },
        { "gas-reduction", "10", "gas", false },
    };

    // Asked again with each start of the grid, so that what it costs is told by the answers themselves.
    [Theory]
    [MemberData(nameof(Tariffs))]
    public void No_start_on_the_grid_is_cheaper_than_the_one_chosen(string schedule, string cone, string kiln, bool weekly)
    {
        var own = kiln == "gas" ? Fits.Kilns[kiln] with { FuelFactor = 2 } : Fits.Kilns[kiln];
        var request = new FitRequest(
            cone, Units: "C", Kiln: own, Tariff: weekly ? Weekend : TwoRates, StartNotBefore: Friday, TimeZone: "Europe/Berlin");
        var chosen = Fit(schedule, request);
        var choice = chosen.StartChosen!;
        Assert.Equal(choice.Start, chosen.Times.Start);
        Assert.Equal(choice.Saving!.Amount, chosen.Kiln!.Cost!.Amount);
        // A week in quarters of an hour would be 673 fits; every seventh still meets every hour of the day.
        var step = weekly ? 7 : 1;
        for (var start = choice.NotBefore; start <= choice.Latest; start = start.AddMinutes(15 * step))
        {
            var other = Fit(schedule, request with { StartNotBefore = null, Start = Written(start) });
            Assert.True(chosen.Kiln.Cost.Amount <= other.Kiln!.Cost!.Amount, $"{start:u}: {other.Kiln.Cost.Amount} is cheaper");
            if (start == choice.NotBefore) Assert.Equal(choice.Saving.AmountAtOnce, other.Kiln.Cost.Amount);
        }
    }

    // The hours of the night and the hours of the day are all the hours: what is paid for the one and the other is paid for all.
    [Fact]
    public void What_the_night_costs_and_what_the_day_costs_is_what_all_costs()
    {
        double Cost(double day, double night) => Fit("mid-range-glaze", Started(new(day, "EUR", [Night with { PerKilowattHour = night }])))
            .Kiln!.Cost!.Amount!.Value;
        Assert.Equal(Cost(100, 100), Cost(100, 0) + Cost(0, 100), 0.02);
        Assert.InRange(Cost(0, 100) / Cost(100, 100), 0.2, 0.8);
        Assert.Equal(Cost(100, 100), Fit("mid-range-glaze", Started(new(100, "EUR"))).Kiln!.Cost!.Amount!.Value, 0.02);
    }

    // By hand: at 0.2 all day nothing is saved by waiting, so the firing starts at once.
    [Fact]
    public void Where_nothing_is_saved_the_firing_starts_at_once()
    {
        var flat = new FitTariff(0.2, "EUR", [Night with { PerKilowattHour = 0.2 }]);
        var choice = Fit("mid-range-glaze", Chosen() with { Tariff = flat }).StartChosen!;
        Assert.Equal((choice.NotBefore, 0.0, 0.0), (choice.Start, choice.Saving!.Saved, choice.Saving.Percent));
    }

    [Fact]
    public void The_latest_start_that_ends_in_time_is_chosen()
    {
        var fit = Fit("mid-range-glaze", Chosen() with { Tariff = null, FinishBy = "2026-12-06T08:00:00+01:00" });
        Assert.InRange((DateTimeOffset.Parse("2026-12-06T08:00:00+01:00", null) - fit.Times.End!.Value).TotalMinutes, 0, 6);
        Assert.Equal(fit.StartChosen!.Start, fit.Times.Start);
        Assert.Null(fit.StartChosen.Saving);
    }

    [Theory]
    [InlineData("small")]
    [InlineData(null)]
    public void The_peak_comes_in_the_middle_of_its_window(string? kiln)
    {
        var fit = Fit("mid-range-glaze", Chosen() with
        {
            Tariff = null,
            Kiln = kiln is null ? null : Fits.Kilns[kiln],
            PeakBetween = new("2026-12-05T12:00:00+01:00", "2026-12-05T16:00:00+01:00"),
        });
        Assert.InRange((fit.Times.Peak!.Value - DateTimeOffset.Parse("2026-12-05T14:00:00+01:00", null)).TotalMinutes, -6, 0);
    }

    [Fact]
    public void A_tariff_chooses_among_the_starts_that_bring_the_peak_into_its_window()
    {
        var window = new PeakWindow("2026-12-05T09:00:00+01:00", "2026-12-05T20:00:00+01:00");
        var fit = Fit("mid-range-glaze", Chosen() with { PeakBetween = window, FinishBy = "2026-12-05T18:00:00+01:00" });
        Assert.InRange(
            fit.Times.Peak!.Value, DateTimeOffset.Parse(window.From!, null).AddMinutes(-1), DateTimeOffset.Parse(window.To!, null));
        Assert.True(fit.Times.End <= DateTimeOffset.Parse("2026-12-05T18:00:00+01:00", null));
        Assert.NotNull(fit.StartChosen!.Saving);
    }

    [Fact]
    public void What_no_start_does_is_refused_with_what_would_be_possible()
    {
        var finding = Refused(Chosen() with { FinishBy = "2026-12-04T20:00:00+01:00" });
        Assert.Equal(("start-impossible", "/finishBy"), (finding.Code, finding.Field));
        Assert.StartsWith("2026-12-0", Assert.Single(finding.Allowed).ToString(), StringComparison.Ordinal);
        var early = new PeakWindow("2026-12-04T17:30:00+01:00", "2026-12-04T18:30:00+01:00");
        finding = Refused(Chosen() with { PeakBetween = early });
        Assert.Equal(("start-impossible", "/peakBetween"), (finding.Code, finding.Field));
    }

    [Fact]
    public void A_start_that_is_sent_leaves_nothing_to_choose()
    {
        var finding = Refused(Chosen() with { Start = Friday, StartNotBefore = null, FinishBy = "2026-12-06T08:00:00+01:00" });
        Assert.Equal(("start-ambiguous", "/finishBy"), (finding.Code, finding.Field));
    }

    // Berlin, 2027: clocks go from 02:00 to 03:00 on 28 March, and from 03:00 to 02:00 on 31 October (IANA, Europe/Berlin).
    [Fact]
    public void An_hour_that_the_clocks_leave_out_is_no_moment_to_finish_by()
    {
        var finding = Refused(Chosen() with
        {
            TimeZone = "Europe/Berlin",
            StartNotBefore = "2027-03-27T08:00",
            FinishBy = "2027-03-28T02:30",
        });
        Assert.Equal(("start-in-skipped-hour", "/finishBy"), (finding.Code, finding.Field));
        Assert.Equal("2027-03-28T03:00:00+02:00", Assert.Single(finding.Allowed).ToString());
    }

    [Fact]
    public void Of_an_hour_that_comes_twice_the_first_is_taken_to_finish_by_and_said()
    {
        var fit = Fit("mid-range-glaze", Chosen() with
        {
            Tariff = null,
            TimeZone = "Europe/Berlin",
            StartNotBefore = "2027-10-29T08:00",
            FinishBy = "2027-10-31T02:30",
        });
        var said = Assert.Single(fit.Assumed, a => a.Pointer == "/finishBy");
        Assert.Equal("2027-10-31T02:30:00+02:00", said.Value);
        Assert.InRange((DateTimeOffset.Parse("2027-10-31T02:30:00+02:00", null) - fit.Times.End!.Value).TotalMinutes, 0, 6);
    }

    [Theory]
    [InlineData("Mars/Olympus", null, "time-zone-unknown", "/timeZone")]
    [InlineData(null, "2026-12-06T08:00", "start-without-offset", "/finishBy")]
    [InlineData("Europe/Berlin", "2026-12-36T08:00", "start-unreadable", "/finishBy")]
    [InlineData(null, "Sunday", "start-unreadable", "/finishBy")]
    public void Moments_and_zones_are_read(string? zone, string? finish, string code, string field)
    {
        var finding = Refused(Chosen() with { TimeZone = zone, FinishBy = finish });
        Assert.Equal((code, field), (finding.Code, finding.Field));
    }

    [Theory]
    [InlineData("25:00", "06:00", null, "clock-time-unreadable", "/tariff/periods/0/from")]
    [InlineData(null, "06:00", null, "member-missing", "/tariff/periods/0/from")]
    [InlineData("22:00", "06:00", "someday", "word-unknown", "/tariff/periods/0/days/0")]
    public void Periods_are_read(string? from, string? to, string? day, string code, string field)
    {
        var finding = Refused(Chosen() with { Tariff = new(0.3, "EUR", [new(from, to, day is null ? null : [day], 0.2)]) });
        Assert.Equal((code, field), (finding.Code, finding.Field));
    }

    [Fact]
    public void A_tariff_alone_needs_a_kiln()
    {
        var finding = Refused(Chosen() with { Kiln = null });
        Assert.Equal(("member-missing", "/kiln"), (finding.Code, finding.Field));
    }

    // There is no clock in here: from when on is said by the request, or by who asks; then the answer says so.
    [Fact]
    public void Now_comes_from_outside()
    {
        var request = Chosen() with { StartNotBefore = null };
        var finding = Refused(request);
        Assert.Equal(("member-missing", "/startNotBefore"), (finding.Code, finding.Field));
        var fit = Fits.Fitter.Fit(Fits.Fitter.Catalogue.Find("mid-range-glaze"), request, DateTimeOffset.Parse(Friday, null)).Answer;
        Assert.Equal("2026-12-04T17:07:00+01:00", fit.Assumed.Single(a => a.Field == "/startNotBefore").Value);
        Assert.Equal(Fit("mid-range-glaze", Chosen()).StartChosen!.Start, fit.StartChosen!.Start);
    }

    // In the European Union clocks go from 2:00 to 3:00 on 28 March 2027 and from 3:00 to 2:00 on 31 October 2027 (directive 2000/84/EC:
    // last Sunday of the month, 1:00 UTC), so that the hours from 22 to 6 are seven and nine.
    [Theory]
    [InlineData("2027-03-27T12:00:00+01:00", 600, 420)]
    [InlineData("2027-10-30T12:00:00+02:00", 600, 540)]
    [InlineData("2027-11-01T12:00:00+01:00", 600, 480)]
    public void A_night_is_as_long_as_its_clock_says(string noon, int begins, int lasts)
    {
        var tariff = new TariffClock(0.36, [new(TimeSpan.FromHours(22), TimeSpan.FromHours(6), null, 0.18)]);
        var prices = tariff.Prices(
            NodaTime.DateTimeZoneProviders.Tzdb["Europe/Berlin"], DateTimeOffset.Parse(noon, null), 24 * 60);
        Assert.Equal([(0, 0.36), (begins, 0.18), (begins + lasts, 0.36)], prices);
    }

    // The programme ends at 8 by the clock on the wall, an hour earlier by the sun.
    [Fact]
    public void An_end_over_a_change_of_clocks_is_the_hour_on_the_wall()
    {
        var request = Chosen() with
        {
            Tariff = null,
            TimeZone = "Europe/Berlin",
            StartNotBefore = "2027-03-26T12:00",
            FinishBy = "2027-03-28T08:00",
        };
        var fit = Fit("mid-range-glaze", request);
        Assert.InRange((DateTimeOffset.Parse("2027-03-28T06:00:00Z", null) - fit.Times.End!.Value).TotalMinutes, 0, 6);
        Assert.Equal(TimeSpan.FromHours(1), fit.StartChosen!.Start.Offset);
    }

    private static FitRequest Chosen() => new(
        "6", Units: "C", Kiln: Fits.Kilns["small"], Tariff: TwoRates, StartNotBefore: Friday);

    private static FitRequest Started(FitTariff tariff) => new(
        "6", Units: "C", Kiln: Fits.Kilns["small"], Tariff: tariff, Start: Friday);

    private static ScheduleFit Fit(string schedule, FitRequest request) =>
        Fits.Fitter.Fit(Fits.Fitter.Catalogue.Find(schedule), request).Answer;

    private static Finding Refused(FitRequest request) =>
        Assert.Single(Assert.Throws<RefusedException>(() => Fit("mid-range-glaze", request)).Findings);

    private static string Written(DateTimeOffset moment) =>
        moment.ToString("yyyy-MM-ddTHH:mm:sszzz", System.Globalization.CultureInfo.InvariantCulture);
}
