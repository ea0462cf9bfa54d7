using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.HeatWork;
using ConeService.Firing.HeatWork;
using ConeService.Firing.Tests.Support;
using static ConeService.Firing.Tests.HeatWork.Firings;

namespace ConeService.Firing.Tests.HeatWork;

public class WitnessTests
{
    private static readonly HeatWorkComparer Comparer = new(new(Reference.Charts));

    // The kiln really is 12 K hotter than its meter: the cones are computed from the truth by the exact integral, and
    // the comparison sees only the meter.
    [Fact]
    public void The_offset_of_a_meter_is_found_again()
    {
        var lean7 = ConeBend.Degrees(Ramp(60, 1222 + 12).Progress(Curve("7")));
        var firing = Firing(Cone("6", "down"), new(SentText.Of("7"), Degrees: lean7), Cone("10", "standing"));
        // The whole history moves by 12 K, its start included, which no cone notices.
        var (answer, _) = Comparer.Answer(firing);
        var offset = answer.Firings[0].Offset;
        Assert.Equal(12, offset.CelsiusDifference!.Value, 1.5);
        Assert.InRange(offset.StandardErrorCelsiusDifference!.Value, 2, 8);
        Assert.Empty(answer.Firings[0].Contradictions);
        Assert.Null(answer.Pooled);
    }

    [Fact]
    public void Firings_are_pooled_and_the_error_shrinks()
    {
        var lean = ConeBend.Degrees(Ramp(60, 1222 - 8).Progress(Curve("6")));
        var firing = Firing(new WitnessCone(SentText.Of("6"), Degrees: lean));
        var (answer, _) = Comparer.Answer(new CompareRequest { Firings = [firing, firing, firing, firing] });
        Assert.Equal(-8, answer.Pooled!.CelsiusDifference!.Value, 0.1);
        Assert.Equal(0.5, answer.Pooled.StandardErrorCelsiusDifference!.Value / answer.Firings[0].Offset.StandardErrorCelsiusDifference!.Value, 0.01);
    }

    [Fact]
    public void Cones_on_one_side_only_give_a_bound()
    {
        var (answer, _) = Comparer.Answer(Firing(Cone("6", "down")));
        Assert.Null(answer.Firings[0].Offset.CelsiusDifference);
        // Source: the chart prints 1222 °C for cone 6 at 60 °C/h; the programme ends there.
        Assert.Equal(0, answer.Firings[0].Offset.AtLeastCelsiusDifference!.Value, 0.05);
        Assert.Equal(
            0, Comparer.Answer(Firing(new WitnessCone(SentText.Of("6"), Clock: 6))).Answer.Firings[0].Offset.AtLeastCelsiusDifference!.Value, 0.05);
    }

    [Fact]
    public void Cones_that_contradict_each_other_are_named()
    {
        var (answer, _) = Comparer.Answer(Firing(Cone("6", "standing"), Cone("7", "down")));
        Assert.Contains(
            answer.Firings[0].Contradictions,
            c => c.ToString().Contains("Cone 7 went further than cone 6", StringComparison.Ordinal));
        Assert.True(answer.Firings[0].Offset.StandardErrorCelsiusDifference > 10);
    }

    [Theory]
    [InlineData("/observations/0", null, null, null)]
    [InlineData("/observations/0", "down", 6.0, null)]
    [InlineData("/observations/0/look", "half", null, null)]
    [InlineData("/observations/0/clock", null, 13.0, null)]
    [InlineData("/observations/0/degrees", null, null, double.NaN)]
    public void A_witness_cone_must_be_described_once(string field, string? look, double? clock, double? degrees)
    {
        var refused = Assert.Throws<RefusedException>(
            () => Comparer.Answer(Firing(new WitnessCone(SentText.Of("6"), look, clock, degrees))));
        Assert.Equal(field, Assert.Single(refused.Findings).Field);
    }

    private static CompareRequest Firing(params WitnessCone[] cones) =>
        new() { Units = "C", Segments = [new(60, 1222)], Observations = cones };

    private static WitnessCone Cone(string cone, string look) => new(SentText.Of(cone), look);
}
