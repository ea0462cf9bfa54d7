using ConeService.Contract.Loads;
using ConeService.Contract.Plans;
using ConeService.Contract.Schedules;
using ConeService.Planning.Digest;
using ConeService.Planning.Tests.Support;

namespace ConeService.Planning.Tests.Digest;

/// <summary>Thick ware is fired as slowly as its fitted schedule asks, thin ware beside it as quickly as ever.</summary>
public sealed class SlowWareTests
{
    private static readonly PlanEffort Steps = new(Seconds: 0, Steps: 300, Workers: 1);
    private static readonly Planner Planner = new(Studio.Reference);

    private static readonly PlanKiln Kiln = new(
        new("K", "electric", ["oxidation"], "8", Interior: new(640, DiameterMillimetres: 560)),
        [new("bisque", "06", "oxidation"), new("glaze", "6", "oxidation")]);

    private static PlanPiece Head(string id = "head", int wall = 24, string? due = "2026-12-12T12:00") => new(
        new PieceRequest(
            id, 1, "sculpture-body", State: "bone-dry", ThickestMillimetres: wall, Size: new(300, 200)), Due: due);

    private static PlanRequest Request(params PlanPiece[] pieces) => Studio.Request(pieces) with { Kilns = [Kiln] };

    // What the fit says by itself, asked as whoever prints the sheet asks it.
    private static int Opening(string schedule, string cone, double? wall) => (int)Math.Ceiling(Studio.Reference.Schedules.Fit(
        schedule, new FitRequest(
            cone, Units: "C", Kiln: Kiln.Kiln, Load: wall is null ? null : new FitLoad(ThickestMillimetres: wall)))
        .Answer.Times.OpeningMinutes!.Value);

    private static double Minutes(PlanFiring firing) => (firing.OpeningFrom - firing.Start).TotalMinutes;

    [Fact]
    public async Task A_thick_head_is_planned_with_the_hours_and_the_sheet_of_its_wall()
    {
        var plan = await Planner.PlanAsync(Request(Head()), Steps);
        var firing = Assert.Single(plan.Firings);

        Assert.Equal(Opening("bisque-mixed-ware", "06", 24), Minutes(firing));
        Assert.True(Minutes(firing) > Opening("bisque-mixed-ware", "06", null) + (20 * 60), "A day longer than thin ware.");
        Assert.Contains("&thickestMillimetres=24", firing.FittedSchedule!.Path, StringComparison.Ordinal);
        Assert.Equal(24, firing.ThickestMillimetres);
        Assert.Empty(PlanJudge.Faults(Request(Head()), plan));
    }

    [Fact]
    public void A_kiln_has_a_programme_for_each_wall_that_is_fired_in_another_way_and_thin_ware_may_ride_along()
    {
        var digested = Studio.Digest(Request(Studio.Mug("a", 3), Head(wall: 24), Head("bowl", 14), Head("cup", 7)));
        var bisque = digested.Kilns[0].Programmes.Where(p => p.Entry == 0).ToList();

        // 7 mm lies below the 8 mm that the schedule was made for: it is fired as the mugs of which nobody told.
        Assert.Equal([7, 14, 24], bisque.Select(p => p.Ware.ThickestMillimetres!.Value));
        Assert.Equal(
            new[] { (double?)null, 14, 24 }.Select(w => Opening("bisque-mixed-ware", "06", w)), bisque.Select(p => p.Hours.Minutes));
        var types = digested.Problem.Kilns[0].Types.Where(t => t.Menu == 0).ToList();
        Assert.Equal([2, 3, 4], types.Select(t => t.Takes.Count(x => x)));
        Assert.Contains(digested.Assumed, a => a.Pointer == "/kilns/0/firings/0/minutes" && a.Ware.ThickestMillimetres == 24);
    }

    [Fact]
    public async Task Mugs_do_not_wait_for_the_head_and_ride_along_where_that_saves_a_firing()
    {
        var apart = await Planner.PlanAsync(
            Request(Studio.Mug("a", 8, due: "2026-12-06T12:00") with { Then = null }, Head() with { Ready = "2026-12-06T00:00" }), Steps);
        Assert.Equal(0, apart.Summary.Late);
        Assert.Equal([null, 24], apart.Firings.Select(f => f.ThickestMillimetres));
        Assert.True(Minutes(apart.Firings[0]) < Minutes(apart.Firings[1]));
        Assert.DoesNotContain("thickest", apart.Firings[0].FittedSchedule!.Path, StringComparison.Ordinal);

        var together = await Planner.PlanAsync(Request(Studio.Mug("a", 8, due: "2026-12-12T12:00") with { Then = null }, Head()), Steps);
        Assert.Equal(2, Assert.Single(together.Firings).Layers.SelectMany(l => l.Pieces).Select(p => p.Id).Distinct().Count());
        Assert.Equal(Opening("bisque-mixed-ware", "06", 24), Minutes(together.Firings[0]));
    }

    [Fact]
    public async Task Thick_glazed_ware_is_fired_by_its_wall_too()
    {
        var jar = new PlanPiece(
            new PieceRequest(
                "jar", 1, "mid-range-stoneware-light", null, [new("mid-range-gloss")], "bisqued", ThickestMillimetres: 40,
                Size: new(300, 200)),
            Due: "2026-12-12T12:00");
        var firing = Assert.Single((await Planner.PlanAsync(Request(jar), Steps)).Firings);

        Assert.Equal(Opening("mid-range-glaze", "6", 40), Minutes(firing));
        Assert.True(Minutes(firing) > Opening("mid-range-glaze", "6", null), "A thick wall passes the quartz inversion slowly.");
    }

    [Fact]
    public async Task Minutes_that_were_sent_hold_and_too_few_of_them_are_told_of()
    {
        MenuFiring Sent(double minutes) => new("bisque", "06", "oxidation", Minutes: minutes, KilowattHours: 60);
        var request = Request(Head()) with { Kilns = [Kiln with { Firings = [Sent(1200)] }] };
        var plan = await Planner.PlanAsync(request, Steps);

        Assert.Equal(1200, Minutes(plan.Firings[0]));
        var warning = Assert.Single(plan.Warnings);
        Assert.Equal((PlanWarningCodes.MinutesTooFew, "/kilns/0/firings/0/minutes"), (warning.Code, warning.Pointer));
        Assert.Contains("walls to 24 mm", warning.Message.ToString(), StringComparison.Ordinal);
        var enough = await Planner.PlanAsync(request with { Kilns = [Kiln with { Firings = [Sent(4000)] }] }, Steps);
        Assert.Empty(enough.Warnings);
        var thin = await Planner.PlanAsync(
            request with { Pieces = [Studio.Mug("a", 8, due: "2026-12-12T12:00") with { Then = null }] }, Steps);
        Assert.Empty(thin.Warnings);
    }

    [Fact]
    public async Task A_firing_that_stands_takes_the_hours_of_the_thickest_in_it()
    {
        GivenFiring Pin(string start, string piece) => new("K", start, "bisque", "06", "oxidation", false, [new(piece)]);
        var request = Request(Head(), Studio.Mug("a", 3)) with { Firings = [Pin("2026-12-02T08:00", "head")] };
        var plan = await Planner.PlanAsync(request, Steps);

        Assert.Equal(Opening("bisque-mixed-ware", "06", 24), Minutes(plan.Firings.Single(f => f.IsPinned)));
        // Two days after, the kiln is still shut: thin ware would have been out.
        Assert.Contains("/firings/1 pins-overlap", Studio.Findings(
            request with { Firings = [Pin("2026-12-02T08:00", "head"), Pin("2026-12-04T08:00", "a")] }));
        Assert.Empty(Studio.Digest(request with { Firings = [Pin("2026-12-02T08:00", "a"), Pin("2026-12-04T08:00", "head")] }).Warnings);
    }

    [Fact]
    public void Many_walls_are_few_classes_each_fired_as_its_thickest()
    {
        var walls = new Walls([5, 5.5, 6, 12, 13, 24, 40]);

        double? Class(double wall) => walls.Class(new(default, wall)).ThickestMillimetres;
        Assert.Equal([6, 13, 24, 40], new[] { 5, 12, 24, 40.0 }.Select(w => Class(w)!.Value));
        Assert.Null(walls.Class(SlowWare.Usual).ThickestMillimetres);
    }

    [Fact]
    public void Of_two_wares_the_dampest_and_the_thickest_decide()
    {
        var (damp, thick) = (SlowWare.Of(new(State: "leather-hard")), SlowWare.Of(new(State: "bone-dry", ThickestMillimetres: 20)));
        var both = damp.With(thick);

        Assert.Equal(("leather-hard", 20), (both.AsLoad()!.Dryness, both.AsLoad()!.ThickestMillimetres));
        Assert.True(both.Covers(damp) && both.Covers(thick) && !damp.Covers(thick) && !thick.Covers(damp));
        Assert.Null(SlowWare.Of(new(State: "bisqued")).AsLoad());
    }
}
