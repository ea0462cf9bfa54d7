using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Schedules;
using ConeService.Data;

namespace ConeService.Firing.Tests.Schedules;

/// <summary>The firing as an operating procedure: who must be there, what is done, and the cautions for which it gives cause.</summary>
public class OperationTests
{
    // Practice of the trade: what belongs to another process has no place on the sheet.
    [Theory]
    [InlineData("bisque-careful", "04", "kiln-fumes,steam-explosion-of-ware,sulphur-dioxide,fluoride-fume,electric-shock,"
        + "kiln-over-temperature,fire-in-kiln-room,thermal-shock-fragments,infrared-glare")]
    [InlineData("raku-western", null, "burns-at-hot-kiln,raku-bin-flames,carbon-monoxide,copper-fume,gas-kiln-ignition,infrared-glare")]
    [InlineData("pit", null, "burns-at-hot-kiln,carbon-monoxide,chlorine-from-chloride-salts,copper-fume,wood-firing-strain,"
        + "steam-explosion-of-ware,sulphur-dioxide,fluoride-fume")]
    [InlineData("candle", null, "electric-shock,fire-in-kiln-room,kiln-fumes,kiln-over-temperature,steam-explosion-of-ware,"
        + "thermal-shock-fragments")]
    [InlineData("crystalline", "10", "electric-shock,fire-in-kiln-room,fluoride-fume,infrared-glare,kiln-fumes,kiln-over-temperature,"
        + "thermal-shock-fragments,zinc-fume")]
    public void Cautions_are_those_for_which_the_firing_gives_cause(string schedule, string? cone, string expected) =>
        Assert.Equal(
            expected.Split(',').Order(StringComparer.Ordinal),
            Fits.Fit(schedule, cone).Answer.Cautions.Select(c => c.Id).Order(StringComparer.Ordinal));

    [Theory]
    [InlineData("gas-reduction", "10")]
    [InlineData("salt", "9")]
    [InlineData("wood-tunnel", "11")]
    public void The_start_of_reduction_is_told_once(string schedule, string cone)
    {
        var told = Fits.Fit(schedule, cone).Answer.Cautions.Where(c => c.Control.Contains("reduc", StringComparison.OrdinalIgnoreCase));
        Assert.Equal("explosive-reduction", Assert.Single(told).Id);
    }

    // Live flame is never left; an electric kiln is attended at its start, where vents are set, and in its last hour.
    [Theory]
    [InlineData("gas-reduction", "10", null, 1)]
    [InlineData("wood-tunnel", "11", null, 1)]
    [InlineData("raku-western", null, null, 1)]
    [InlineData("bisque-careful", "04", null, 3)]
    [InlineData("mid-range-glaze", "6", null, 2)]
    [InlineData("mid-range-glaze", "6", "whole-firing", 1)]
    public void The_hours_that_need_a_person_are_named(string schedule, string? cone, string? rule, int periods)
    {
        var fit = Fit(schedule, new(SentText.Of(cone), Units: "C", Attendance: rule));
        var attended = fit.Operation.Attendance;
        Assert.Equal(periods, attended.Count);
        Assert.Contains(attended, a => a.FromMinutes <= fit.Times.PeakMinutes && a.ToMinutes >= fit.Times.PeakMinutes);
        Assert.Equal(0, attended[0].FromMinutes);
        Assert.All(attended.Zip(attended.Skip(1)), p => Assert.True(p.First.ToMinutes < p.Second.FromMinutes));
    }

    // The lid of a lustre firing stands open in two periods, one after the other: why somebody is there is told once.
    [Fact]
    public void Why_somebody_is_there_is_told_once()
    {
        var told = Fits.Fit("lustre", "018").Answer.Operation.Attendance[0].Message.ToString();
        var sentences = told.Split(". ").Select(s => s.TrimEnd('.')).ToList();
        Assert.Equal(2, sentences.Count);
        Assert.Equal(sentences.Distinct(), sentences);
    }

    [Fact]
    public void Every_template_says_what_to_do_before_while_in_an_emergency_and_at_the_opening()
    {
        foreach (var schedule in Fits.Fitter.Catalogue.Schedules)
        {
            var fit = Fits.Fit(schedule.Id, schedule.Row.EndCone).Answer;
            ProcedurePhase[] phases = [ProcedurePhase.Prepare, ProcedurePhase.Stop, ProcedurePhase.Open];
            Assert.All(phases, p => Assert.Contains(fit.Operation.Procedure, s => s.Phase == p));
            Assert.True(fit.ShutDown.Count > 0 || fit.Operation.Procedure.Any(s => s.Phase == ProcedurePhase.Finish), schedule.Id);
            Assert.True(fit.Operation.Checks.Count >= 3, schedule.Id);
            Assert.DoesNotContain(fit.Operation.Procedure, s => s.Message.ToString().Contains("safe", StringComparison.OrdinalIgnoreCase));
        }
    }

    // A pit has neither damper nor firemouth.
    [Fact]
    public void A_pit_is_not_shut_down_as_a_kiln() =>
        Assert.DoesNotContain(Fits.Fit("pit", null).Answer.ShutDown, m => m.ToString().Contains("damper", StringComparison.Ordinal));

    // Berlin: on 29 March 2026 the clocks go from 2:00 to 3:00, on 25 October from 3:00 back to 2:00.
    [Fact]
    public void A_start_on_the_wall_is_a_moment_of_its_zone()
    {
        DateTimeOffset? Start(string start) => Fit("candle", new(Units: "C", Start: start, TimeZone: "Europe/Berlin")).Times.Start;
        Assert.Equal(new DateTimeOffset(2026, 12, 4, 18, 0, 0, TimeSpan.FromHours(1)), Start("2026-12-04T18:00"));
        Assert.Equal(new DateTimeOffset(2026, 7, 4, 18, 0, 0, TimeSpan.FromHours(2)), Start("2026-07-04T16:00:00Z"));
        var twice = Fit("candle", new(Units: "C", Start: "2026-10-25T02:30:00", TimeZone: "Europe/Berlin"));
        Assert.Equal(new DateTimeOffset(2026, 10, 25, 0, 30, 0, TimeSpan.Zero), twice.Times.Start);
        Assert.Contains(twice.Assumed, a => a.Pointer == "/start");
    }

    [Theory]
    [InlineData("2026-03-29T02:30:00", "Europe/Berlin", FindingCodes.StartInSkippedHour)]
    [InlineData("2026-03-28T18:00:00", "Europe/Berln", FindingCodes.TimeZoneUnknown)]
    [InlineData("1820-03-28T18:00:00", "Europe/Berlin", FindingCodes.StartUnreadable)]
    public void A_start_that_is_no_moment_is_refused(string start, string zone, string code)
    {
        var refused = Assert.Throws<RefusedException>(() => Fit("candle", new(Units: "C", Start: start, TimeZone: zone)));
        Assert.Contains(refused.Findings, f => f.Code == code);
    }

    private static ScheduleFit Fit(string schedule, FitRequest request) =>
        Fits.Fitter.Fit(Fits.Fitter.Catalogue.Find(schedule), request).Answer;
}
