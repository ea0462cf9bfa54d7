using ConeService.Contract.HeatWork;
using ConeService.Contract.Schedules;
using ConeService.Firing.HeatWork;
using ConeService.Firing.Schedules;
using ConeService.Firing.Tests.Support;

namespace ConeService.Firing.Tests.Schedules;

/// <summary>
/// Every template for every cone of its range: the programme, sent to the heat-work capability as a request of its own, puts the cone just
/// down and leaves the next standing. What kilns make of it is in <see cref="ClosedLoopTests"/>.
/// </summary>
public class EveryFitTests
{
    private static readonly HeatWorkCalculator Calculator = new(Reference.Charts);

    public static TheoryData<string, string> Combinations
    {
        get
        {
            var data = new TheoryData<string, string>();
            foreach (var schedule in Fits.Fitter.Catalogue.Schedules.Where(s => s.EndCone is not null))
            {
                foreach (var units in (string[])["C", "F"]) data.Add(schedule.Id, units);
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Combinations))]
    public void The_programme_puts_the_cone_just_down_and_leaves_the_next_standing(string id, string units)
    {
        var schedule = Fits.Fitter.Catalogue.Find(id);
        foreach (var cone in Cones(schedule))
        {
            var fit = Fits.Fit(id, cone, units: units).Answer;
            var work = HeatWorkOf(fit.Programme);
            var target = work.Cones.Single(c => c.Cone == cone);
            var next = work.Cones.SkipWhile(c => c.Cone != cone).ElementAtOrDefault(1);
            if (fit.WhyNot is { } whyNot)
            {
                Assert.Contains(cone, whyNot.ToString(), StringComparison.Ordinal);
                continue;
            }

            Assert.True(Math.Abs(target.Progress - 1) <= 0.05, $"{id}, {cone}, {units}: cone {cone} at {target.Progress}: {Words(fit)}");
            Assert.True(next is null || next.Progress < 1, $"{id}, {cone}, {units}: cone {next?.Cone} at {next?.Progress}: {Words(fit)}");
        }
    }

    private static HeatWorkAnswer HeatWorkOf(FittedProgramme programme) => Calculator.Answer(new()
    {
        Units = programme.Units,
        Chart = programme.Chart,
        Start = (double)programme.Start,
        Segments = [.. programme.Segments.Select(s => new ProgrammeSegment((double)s.Rate, (double)s.Target, s.HoldMinutes))],
        CoolingRate = (double?)programme.CoolingRate,
    }).Answer;

    private static IEnumerable<string> Cones(Schedule schedule) =>
        Reference.Charts.Default.Cones.Where(c => schedule.Takes(c.Cone)).Select(c => c.Cone.ToString());

    private static string Words(ScheduleFit fit) =>
        string.Join("; ", fit.Segments.Select(s => s.InWords)) + " | " + string.Join(" ", fit.Changes.Select(c => c.Message));
}
