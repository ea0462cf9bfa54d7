using ConeService.Contract.Loads;
using ConeService.Contract.Plans;
using ConeService.Contract.Schedules;
using ConeService.Planning.Digest;
using ConeService.Planning.Tests.Support;

namespace ConeService.Planning.Tests.Explain;

/// <summary>When somebody must be at the kiln, told as the fitted sheet tells it, and when nobody is there then.</summary>
public sealed class AttendedTests
{
    private static readonly PlanEffort Steps = new(Seconds: 0, Steps: 200, Workers: 1);
    private static readonly Planner Planner = new(Studio.Reference);

    private static readonly IReadOnlyList<PlanSpan> Staffed = [.. new[] { 1, 2, 3, 4, 7, 8, 9, 10 }
        .Select(d => new PlanSpan($"2026-12-{d:00}T09:00", $"2026-12-{d:00}T18:00"))];

    private static readonly PlanKiln Gas = new(
        new("Gas", "gas", ["oxidation", "reduction"], "12", Interior: new(700, WidthMillimetres: 600, DepthMillimetres: 600)),
        [new("glaze", "10", "reduction")]);

    private static readonly PlanPiece Jars = new(
        new PieceRequest("jars", 30, "high-fire-stoneware-light", null, [new("tenmoku")], "bisqued", Size: new(150, 130)),
        Due: "2026-12-11T12:00");

    private static PlanRequest Request(PlanKiln kiln, PlanPiece piece) =>
        Studio.Request(piece) with { Kilns = [kiln], Staffed = Staffed };

    [Fact]
    public async Task A_live_flame_that_burns_on_when_all_have_left_is_told_of_before_all()
    {
        var plan = await Planner.PlanAsync(Request(Gas, Jars), Steps);
        var (firing, warning) = (Assert.Single(plan.Firings), Assert.Single(plan.Warnings));

        Assert.Equal((PlanWarningCodes.LiveFlameAlone, "/kilns/0/firings/0"), (warning.Code, warning.Pointer));
        var time = Assert.Single(firing.Attendance);
        Assert.True(time.LiveFlame);
        // Staffed to 18:00; the flame burns into the night.
        Assert.Equal((firing.Start, firing.Start.Date.AddHours(18), time.To), (
            time.From, time.NobodyThere[0].From.DateTime, time.NobodyThere[^1].To));
        Assert.True(time.To > firing.Peak && firing.Peak > firing.Start && firing.ProgrammeEnds >= firing.Peak);
        Assert.Contains($"18:00 to {time.To:HH:mm}", warning.Message.ToString(), StringComparison.Ordinal);
        // In the morning, not when all go home.
        Assert.Equal(10, firing.Start.Hour);
    }

    [Fact]
    public async Task The_hours_are_those_of_the_fitted_sheet()
    {
        var firing = (await Planner.PlanAsync(Request(Gas, Jars), Steps)).Firings[0];
        var sheet = Studio.Reference.Schedules.Fit(firing.Schedule!, new FitRequest(
            "10", Units: "C", Kiln: Gas.Kiln, Start: firing.Start.ToString("yyyy-MM-ddTHH:mm:sszzz", null))).Answer;

        Assert.Equal(
            sheet.Operation.Attendance.Select(a => (a.Message.ToString(), Math.Ceiling(a.ToMinutes))),
            firing.Attendance.Select(a => (a.Message.ToString(), (a.To - firing.Start).TotalMinutes)));
        Assert.Equal(Math.Round(sheet.Times.PeakMinutes), (firing.Peak!.Value - firing.Start).TotalMinutes);
    }

    [Fact]
    public async Task The_last_hour_of_an_electric_kiln_at_night_is_told_of_and_a_start_leaves_time_to_look_after_it()
    {
        var kiln = Studio.Kiln() with { Firings = [new("glaze", "6", "oxidation")] };
        var mugs = Studio.Mug("a", 80, due: "2026-12-10T12:00", bisqued: true);
        var plan = await Planner.PlanAsync(
            Request(kiln with { Starts = ["2026-12-04T18:00"] }, mugs), Steps);
        var warning = Assert.Single(plan.Warnings);

        Assert.Equal(PlanWarningCodes.NobodyThere, warning.Code);
        Assert.Contains("Fri 4 Dec 18:00 to 18:30; Sat 5 Dec 0", warning.Message.ToString(), StringComparison.Ordinal);
        var starts = Studio.Digest(Request(kiln, mugs)).Problem.Kilns[0].Starts;
        // Begin at 9:00, an hour of loading; half an hour before six.
        Assert.Equal([10 * 60, (17 * 60) + 30], starts.Take(2));
        Assert.DoesNotContain(18 * 60, starts);
    }

    [Fact]
    public async Task Where_somebody_is_always_there_the_hours_stand_and_nothing_is_warned_of()
    {
        var plan = await Planner.PlanAsync(Request(Gas, Jars) with { Staffed = null }, Steps);

        Assert.Empty(plan.Warnings);
        Assert.Empty(Assert.Single(plan.Firings[0].Attendance).NobodyThere);
    }

    [Fact]
    public async Task Hours_sent_that_no_usual_programme_ends_in_still_tell_of_a_flame()
    {
        var kiln = Gas with { Firings = [new("glaze", "10", "reduction", Minutes: 400, KilowattHours: 100)] };
        var firing = (await Planner.PlanAsync(Request(kiln, Jars), Steps)).Firings[0];

        // A programme of thirteen hours is not that of a firing of less than seven.
        Assert.Null(firing.Peak);
        Assert.Equal((firing.Start, true), (firing.Attendance[0].From, firing.Attendance[0].LiveFlame));
    }

    [Fact]
    public void What_of_a_time_nobody_covers()
    {
        var spans = new Spans([(10, 20), (30, 40)]);

        Assert.Equal([(5, 10), (20, 30), (40, 50)], spans.Without(5, 50));
        Assert.Empty(spans.Without(12, 20));
        Assert.Equal([(41, 50)], spans.Without(41, 50));
    }

    [Fact]
    public async Task Notes_of_the_load_check_come_with_the_firing_once_each_with_their_pieces()
    {
        var other = Jars with { Piece = Jars.Piece! with { Id = "cups", Count = 4, Size = new(90, 80) } };
        var request = Request(Gas, Jars) with { Pieces = [Jars, other] };
        var plan = await Planner.PlanAsync(request, Steps);
        var firing = Assert.Single(plan.Firings);
        var said = Studio.Reference.Loads.Check(PlanJudge.Load(request, plan, firing)).Pieces[0].Reasons
            .Select(r => r.Texts.Student.ToString()).ToList();

        Assert.Equal(said, firing.LoadingNotes.Select(n => n.Reason.Texts.Student.ToString()));
        Assert.Contains(said, s => s.Contains("cookie or catcher", StringComparison.Ordinal));
        Assert.All(firing.LoadingNotes, n => Assert.Equal(["jars", "cups"], n.Pieces));
    }
}
