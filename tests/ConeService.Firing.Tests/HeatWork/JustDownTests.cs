using ConeService.Contract.Cones;
using ConeService.Contract.HeatWork;
using ConeService.Data;
using ConeService.Firing.Cones;
using ConeService.Firing.HeatWork;
using ConeService.Firing.Tests.Schedules;
using ConeService.Firing.Tests.Support;

namespace ConeService.Firing.Tests.HeatWork;

/// <summary>Words and numbers agree: a cone that misses its end point by less than 0.1 K counts as just down.</summary>
public class JustDownTests
{
    private static readonly HeatWorkCalculator Calculator = new(Reference.Charts);

    // Source: the chart prints 1222 °C for cone 6 at 60 °C/h, the rate of the last 100 °C; before 1000 °C cone 6 hardly works.
    [Fact]
    public void A_quicker_start_does_not_take_the_cone_away()
    {
        var answer = Follow(new ProgrammeSegment(100, 1000), new ProgrammeSegment(60, 1222));
        Assert.Equal(("6", "7", 0.0), (answer.Reached, answer.Next, answer.Fraction));
        Assert.Equal("6 and 0.00 of the way to 7", answer.Reading.ToString());
        var six = answer.Cones.Single(c => c.Cone == "6");
        Assert.Equal((90.0, 6.0), (six.BendDegrees, six.Clock));
        Assert.NotNull(six.DownAtMinutes);
        Assert.Equal("6", new ReadingCalculator(Reference.Charts).Answer(new(1222), Reference.Ask("60C/h")).Reached);
    }

    // Within 0.1 °C of the printed value, and just outside it.
    [Theory]
    [InlineData(1221.91, "6")]
    [InlineData(1221.88, "5.5")]
    public void A_tenth_of_a_degree_decides_nothing(double peak, string reached)
    {
        Assert.Equal(reached, Follow(new ProgrammeSegment(60, peak)).Reached);
        Assert.Equal(reached, new ReadingCalculator(Reference.Charts).Answer(new((decimal)peak), Reference.Ask("60C/h")).Reached);
    }

    [Fact]
    public void A_fraction_is_never_one()
    {
        var answer = Follow(new ProgrammeSegment(60, 1221.88));
        Assert.InRange(answer.Fraction!.Value, 0.99, 0.9999);
        Assert.Equal("5.5 and 0.99 of the way to 6", answer.Reading.ToString());
    }

    // By the table that long histories are followed with as well: the same moment to a hundredth of a minute.
    [Fact]
    public void A_long_log_is_read_alike()
    {
        HeatPoint[] points = [.. Enumerable.Range(0, 1202).Select(i => new HeatPoint(i / 60.0, 20 + i + 273.15)),
            new(20 + (1.95 / 60), 1221.95 + 273.15)];
        HeatPoint[] ends = [points[0], points[^1]];
        var curves = new ConeCurves(Reference.Charts.Default, 60);
        var (many, one) = (curves.Measure(new(points)), curves.Measure(new(ends)));
        Assert.Equal("6", many.Reached!.Cone.Cone.ToString());
        Assert.Equal("6", one.Reached!.Cone.Cone.ToString());
        Assert.Equal(one.Reached.DownAtHours!.Value, many.Reached.DownAtHours!.Value, 1e-4);
    }

    [Fact]
    public void Progress_is_told_to_a_hundred()
    {
        var answer = Follow(new ProgrammeSegment(60, 1222));
        Assert.Equal(100, answer.Cones.Single(c => c.Cone == "022").Progress);
        Assert.All(answer.Cones, c => Assert.InRange(c.Progress, 0, 100));
    }

    // The programme as it is and the kiln that follows it read alike when the kiln has power to spare.
    [Fact]
    public void A_kiln_that_follows_reads_what_its_programme_reads()
    {
        var fit = Fits.Fit("mid-range-glaze", "6", Fits.Kilns["small"]).Answer;
        Assert.Equal("6", fit.HeatWork.Reached);
        Assert.Equal(fit.HeatWork.Reached, fit.Kiln!.HeatWork.Reached);
    }

    [Theory]
    [InlineData("witness-self-supporting", 1222, "6", Confidence.FromMemory)] // 7 was recalled at 15 °C/h.
    [InlineData("nbs-1926", 1222, "6", Confidence.FromMemory)] // Printed 1190 at 20 and 1230 °C at 150 °C/h, 7 at 1210 and 1250.
    public void A_firing_is_as_sure_as_its_weakest_cell(string chart, double peak, string reached, Confidence confidence)
    {
        var answer = Follow(chart, new ProgrammeSegment(60, peak));
        Assert.Equal((reached, confidence), (answer.Reached, answer.Confidence));
        Assert.All(answer.ComputedFrom, c => Assert.Equal(chart, c.Chart));
        Assert.Contains(answer.ComputedFrom, c => c.Cone == reached);
        Assert.Null(answer.BorrowedFrom);
    }

    [Fact]
    public void A_firing_on_borrowed_curves_names_the_lender()
    {
        var answer = Follow("older-150", new ProgrammeSegment(60, 1205));
        Assert.Equal(new BorrowedShape("witness-self-supporting", "orton-2016"), answer.BorrowedFrom);
        Assert.Contains(answer.ComputedFrom, c => c is { Chart: "witness-self-supporting", Cone: "6" });
        Assert.Contains("orton-2016", answer.Sources);
    }

    private static HeatWorkAnswer Follow(params ProgrammeSegment[] segments) => Follow("witness-self-supporting", segments);

    private static HeatWorkAnswer Follow(string chart, params ProgrammeSegment[] segments) =>
        Calculator.Answer(new HeatWorkRequest { Units = "C", Start = 20, Chart = chart, Segments = segments }).Answer;
}
