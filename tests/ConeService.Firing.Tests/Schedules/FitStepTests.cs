using ConeService.Contract.Kilns;
using ConeService.Contract.Schedules;
using ConeService.Data;
using ConeService.Firing.Tests.Support;

namespace ConeService.Firing.Tests.Schedules;

/// <summary>What fitting does to the segments of a template; expected figures by hand from the tables of the data package.</summary>
public class FitStepTests
{
    // thickness-limits, bound water: 60 °C/h at 10 mm, 30 at 50 mm, straight in ln-ln: 60·2.5^(ln ½/ln 5) = 40.4 at 25 mm. Steam:
    // 50·2.5^(ln 0.6/ln 5) = 37.4.
    [Fact]
    public void Ramps_through_steam_and_bound_water_follow_the_thickness()
    {
        var fit = Fits.Fit("bisque-careful", "06", load: new(ThickestMillimetres: 25, Dryness: "bone-dry")).Answer;
        Assert.All(fit.Segments.Where(s => s.TargetCelsius <= 300), s => Assert.True(s.RateCelsiusPerHour <= 37, $"{s.InWords}"));
        Assert.All(
            fit.Segments.Where(s => s.TargetCelsius is > 300 and <= 650), s => Assert.True(s.RateCelsiusPerHour <= 40, $"{s.InWords}"));
        Assert.Contains(fit.Changes, c => c.Code == FitChangeCode.SlowedForThickness);
    }

    [Fact]
    public void Walls_that_a_template_was_made_for_keep_its_rates()
    {
        var fit = Fits.Fit("bisque-careful", "04", load: new(ThickestMillimetres: 10)).Answer;
        Assert.Equal([50m, 50, 60, 80], fit.Segments.Take(4).Select(s => s.RateCelsiusPerHour!.Value));
        Assert.Equal([90m, 200, 600, 900], fit.Segments.Take(4).Select(s => s.TargetCelsius));
    }

    // Two hours for ordinary walls, and 20 min for each of 25 − 12 mm: 380 min. Wet: eight hours, and 20 min for each of
    // 20 − 12 mm: 640 min.
    [Theory]
    [InlineData("bisque-careful", "06", 25, "bone-dry", 380, false)]
    [InlineData("bone-china", "9", 20, "wet", 640, true)]
    [InlineData("bone-china", "9", 8, "leather-hard", 240, true)]
    [InlineData("bisque-mixed-ware", "06", 8, "wet", 480, false)]
    public void Drying_follows_dryness_and_thickness_and_is_added_where_a_template_has_none(
        string schedule, string cone, double thickness, string dryness, double minutes, bool added)
    {
        var fit = Fits.Fit(schedule, cone, load: new(ThickestMillimetres: thickness, Dryness: dryness)).Answer;
        Assert.Equal((FiringStage.Drying, minutes), (fit.Segments[0].Stage, fit.Segments[0].HoldMinutes));
        Assert.True(fit.Segments[0].TargetCelsius < 100);
        Assert.Equal(added, fit.Changes.Any(c => c.Code == FitChangeCode.DryingAdded));
        Assert.Equal(added, fit.Segments[0].TemplateSegments.Count == 0);
    }

    // schedule-defaults: 12 mm is the wall up to which the template's own drying is enough for bone-dry ware.
    [Fact]
    public void A_wall_of_just_the_drying_thickness_adds_no_drying() => Assert.DoesNotContain(
        Fits.Fit("bisque-careful", "06", load: new(ThickestMillimetres: 12, Dryness: "bone-dry")).Answer.Changes,
        c => c.Code is FitChangeCode.DryingAdded or FitChangeCode.DryingLengthened);

    // Common practice, and docs/schedules.md: raw ware is held below boiling first, two hours for ordinary walls, whatever the template
    // lacks and whether or not its thickness is known. An open fire holds nothing.
    [Fact]
    public void Raw_ware_is_held_below_boiling_by_every_template_that_takes_it()
    {
        var templates = Reference.Dataset.ScheduleTemplates.Where(t => t.Takes.Contains(PieceState.BoneDry)).ToList();
        Assert.True(templates.Count >= 12, $"{templates.Count} templates take raw ware.");
        var added = new List<string>();
        foreach (var template in templates)
        {
            var fit = Fits.Fit(template.Id, template.EndCone?.ToString(), load: new(Dryness: "bone-dry")).Answer;
            if (fit.Changes.Any(c => c.Code == FitChangeCode.DryingAdded)) added.Add(template.Id);
            if (template.KilnHeats.Contains(KilnHeat.Wood) && template.Kind == FiringKind.Pit) continue;
            var first = fit.Segments.First(s => s.HoldMinutes > 0);
            Assert.True(
                first is { Stage: FiringStage.Drying, TargetCelsius: >= 75 and <= 95, HoldMinutes: >= 30 },
                $"{template.Id}: {first.HoldMinutes} min at {first.TargetCelsius} °C");
        }

        Assert.Equal(["bisque-textbook-1914", "bone-china", "wood-tunnel"], added);
    }

    // landmarks organics: from 200 to 600 °C paper and binder burn, and a closed electric kiln keeps the smoke.
    [Fact]
    public void An_electric_kiln_with_raw_ware_is_open_while_paper_and_binder_burn()
    {
        var dataset = Reference.Dataset;
        foreach (var template in dataset.ScheduleTemplates
            .Where(t => t.Takes.Contains(PieceState.BoneDry) && t.KilnHeats.Contains(KilnHeat.Electric) && t.EndCone is not null))
        {
            var from = 20m;
            foreach (var segment in dataset.ScheduleSegments.Where(s => s.Schedule == template.Id).OrderBy(s => s.Number))
            {
                var to = segment.TargetCelsius ?? 1000;
                if (to < from) break;
                if (from < 600 && to > 200) Assert.True(segment.Vent == VentSetting.Open, $"{template.Id} segment {segment.Number}");
                from = to;
            }
        }
    }

    // A controller is given round minutes, never fewer than the wall asks for: 120 + 0.1·20 = 122 min, put in as 130.
    [Fact]
    public void The_hold_for_a_thick_wall_is_rounded_up_to_ten_minutes() =>
        Assert.Equal(
            130, Fits.Fit("bone-china", "9", load: new(ThickestMillimetres: 12.1, Dryness: "bone-dry")).Answer.Segments[0].HoldMinutes);

    // Wet ware: 480 min, and the change says why in one sentence with the wall.
    [Fact]
    public void Added_drying_says_what_it_is_for() => Assert.Equal(
        "A drying segment was added, 10 h 40 min at 80 °C: the ware is wet, and the wall is 20 mm thick.",
        Fits.Fit("bone-china", "9", load: new(ThickestMillimetres: 20, Dryness: "wet")).Answer.Changes
            .Single(c => c.Code == FitChangeCode.DryingAdded).Message.ToString());

    // schedule-defaults: two days at most; 12 mm and 20 min/mm put 2880 − 120 min at 150 mm, and no wall above adds to it.
    [Fact]
    public void Drying_in_the_kiln_ends_at_two_days() =>
        Assert.Equal(
            2880, Fits.Fit("bone-china", "9", load: new(ThickestMillimetres: 200, Dryness: "bone-dry")).Answer.Segments[0].HoldMinutes);

    // schedule-defaults: cooling is limited from 20 mm on. 50 °C/h at 50 mm is 125 at 20 mm, and the drum cools faster than that.
    [Theory]
    [InlineData(19.9, false)]
    [InlineData(20, true)]
    public void Cooling_is_limited_from_twenty_millimetres_on(double thickness, bool limited)
    {
        var kiln = new Kiln("drum", "electric", VolumeLitres: 8, Wall: new("ceramic-fibre", 25), Kilowatts: 3);
        var load = new FitLoad(ThickestMillimetres: thickness, KilogramsWare: 0.5, KilogramsFurniture: 0.5);
        var changes = Fits.Fit("mid-range-glaze", "6", kiln, load).Answer.Changes;
        Assert.Equal(limited, changes.Any(c => c.Code == FitChangeCode.CoolingForThickness));
    }

    // 50 °C/h at 50 mm goes with the inverse of the thickness: 83 at 30 mm, 125 at 20 mm; a small kiln cools faster there than 83. On
    // the grid of 5 °C/h that
    // is 80.
    [Fact]
    public void A_thick_wall_in_a_fast_kiln_is_cooled_through_the_quartz_inversion()
    {
        var kiln = new Kiln("drum", "electric", VolumeLitres: 20, Wall: new("ceramic-fibre", 50), Kilowatts: 4);
        var fit = Fits.Fit("mid-range-glaze", "6", kiln, new(ThickestMillimetres: 30, KilogramsWare: 3, KilogramsFurniture: 2)).Answer;
        var last = fit.Segments[^1];
        Assert.Equal((80m, 500m, FiringStage.SlowCooling), (last.RateCelsiusPerHour, last.TargetCelsius, last.Stage));
        Assert.Equal((null, 650m), (fit.Segments[^2].RateCelsiusPerHour, fit.Segments[^2].TargetCelsius));
        Assert.DoesNotContain(
            Fits.Fit("mid-range-glaze", "6", kiln, new(ThickestMillimetres: 15, KilogramsWare: 3, KilogramsFurniture: 2)).Answer.Changes,
            c => c.Code == FitChangeCode.CoolingForThickness);
    }

    [Fact]
    public void A_target_that_comes_too_close_to_a_cooler_peak_is_lowered()
    {
        // Cone 010 goes down near 900 °C, where the template holds for burn-out; the span of the last ramp is 100 °C.
        var fit = Fits.Fit("bisque-careful", "010").Answer;
        Assert.InRange(fit.PeakCelsius - fit.Segments[^2].TargetCelsius, 95, 106);
        Assert.Contains(fit.Changes, c => c.Code == FitChangeCode.ApproachLowered && c.TemplateSegments.SequenceEqual([4]));
    }

    [Fact]
    public void Steps_that_no_controller_does_are_named_and_left_out()
    {
        var fit = Fits.Fit("raku-western", null).Answer;
        Assert.Equal(3, fit.Segments.Count);
        Assert.Null(fit.Cone);
        Assert.Contains(fit.Changes, c => c.Code == FitChangeCode.DoneByHand && c.TemplateSegments.SequenceEqual([4]));
    }

    public static TheoryData<int> Sizes => [2, 3, 4, 5, 6, 8];

    [Theory]
    [MemberData(nameof(Sizes))]
    public void A_controller_with_few_segments_never_goes_faster_and_every_hold_that_is_gone_is_named(int size)
    {
        foreach (var schedule in Fits.Fitter.Catalogue.Schedules)
        {
            var cone = schedule.EndCone?.ToString();
            var whole = Fits.Fit(schedule.Id, cone).Answer;
            var request = new FitRequest(cone, Units: "C", Kiln: new("few", "wood", ControllerSegments: size));
            var few = Fits.Fitter.Fit(schedule, request).Answer;
            Assert.True(few.Segments.Count <= size, schedule.Id);
            var top = (double)Math.Min(whole.PeakCelsius, few.PeakCelsius) - 5;
            foreach (var celsius in Enumerable.Range(2, 130).Select(i => i * 10.0).Where(t => t < top))
            {
                // The last ramp of the whole may be trimmed by a fifth.
                Assert.True(
                    RateAt(few, celsius) <= (1.21 * RateAt(whole, celsius)) + 1, $"{schedule.Id} at {celsius} °C with {size} segments");
            }

            var lost = few.Changes.Where(c => c.Code is FitChangeCode.Lost or FitChangeCode.SegmentsMerged)
                .SelectMany(c => c.TemplateSegments).ToHashSet();
            foreach (var held in whole.Segments.Where(s => s.HoldMinutes > 0))
            {
                Assert.True(
                    few.Segments.Any(s => s.HoldMinutes > 0 && Math.Abs(s.TargetCelsius - held.TargetCelsius) < 40)
                    || held.TemplateSegments.Any(lost.Contains),
                    $"{schedule.Id}: hold at {held.TargetCelsius}");
            }
        }
    }

    [Fact]
    public void With_two_segments_the_drying_stays_and_the_cone_is_still_met()
    {
        var fit = Fits.Fit("bisque-careful", "06", new("two", "electric", VolumeLitres: 74, ControllerSegments: 2)).Answer;
        Assert.Equal((2, 120.0), (fit.Segments.Count, fit.Segments[0].HoldMinutes));
        Assert.InRange(fit.HeatWork.TargetProgress!.Value, 0.95, 1.05);
        // The steam window asks for 50 °C/h, and the one ramp left must not go faster.
        Assert.True(fit.Segments[1].RateCelsiusPerHour <= 50);
    }

    private static double RateAt(ScheduleFit fit, double celsius)
    {
        var from = (double)fit.Programme.Start;
        foreach (var segment in fit.Segments)
        {
            var to = (double)segment.TargetCelsius;
            if (celsius >= from && celsius < to) return (double)(segment.RateCelsiusPerHour ?? segment.TakenRateCelsiusPerHour)!.Value;
            from = to;
        }

        return double.PositiveInfinity;
    }
}
