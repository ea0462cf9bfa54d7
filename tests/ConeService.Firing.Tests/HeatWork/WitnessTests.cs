using ConeService.Contract.Answers;
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
        var one = answer.Firings[0].Offset.StandardErrorCelsiusDifference!.Value;
        Assert.Equal(0.5, answer.Pooled.StandardErrorCelsiusDifference!.Value / one, 0.01);
    }

    [Fact]
    public void Cones_on_one_side_only_give_a_bound()
    {
        var (answer, _) = Comparer.Answer(Firing(Cone("6", "down")));
        Assert.Null(answer.Firings[0].Offset.CelsiusDifference);
        // Source: the chart prints 1222 °C for cone 6 at 60 °C/h; the programme ends there.
        Assert.Equal(0, answer.Firings[0].Offset.AtLeastCelsiusDifference!.Value, 0.05);
        Assert.Equal(
            0,
            Comparer.Answer(Firing(new WitnessCone(SentText.Of("6"), Clock: 6)))
                .Answer.Firings[0].Offset.AtLeastCelsiusDifference!.Value,
            0.05);
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

    // Source: heat-work specification section 3: guide down, target down and guard standing is a perfect firing, 0 ± 4 K.
    [Fact]
    public void A_perfect_pack_reads_nothing_and_contradicts_nothing()
    {
        var packs = 0;
        foreach (var chart in Reference.Charts.Charts.Where(c => c.DefaultRate is { } r && c.Cones.Any(x => x.Curve(r) is not null)))
        {
            var rate = (double)chart.DefaultRate!.Value.CelsiusPerHour;
            var whole = chart.Cones
                .Where(c => c.Cone.Position == Math.Truncate(c.Cone.Position) && c.Curve(chart.DefaultRate.Value) is not null)
                .Select(c => (Name: c.Cone.ToString(), End: c.Curve(chart.DefaultRate.Value)!.EndPoint(rate) - Zero)).ToList();
            for (var i = 1; i < whole.Count; i++)
            {
                // On the 1926 chart some go down before a cooler one; the sheet takes a guide that goes down first.
                if (whole.Take(i).LastOrDefault(c => c.End <= whole[i].End) is not { Name: { } guide }) continue;
                if (whole.Skip(i + 1).FirstOrDefault(c => c.End >= whole[i].End + 12) is not { Name: { } guard }) continue;
                if (whole[i].End > 1480) continue;
                var (answer, _) = Comparer.Answer(new()
                {
                    Units = "C",
                    Chart = chart.Id,
                    Segments = [new(rate, whole[i].End)],
                    Observations = [Cone(guide, "down"), Cone(whole[i].Name, "down"), Cone(guard, "standing")],
                });
                var place = $"{chart.Id}, {guide} {whole[i].Name} {guard}";
                var offset = answer.Firings[0].Offset;
                Assert.True(Math.Abs(offset.CelsiusDifference!.Value) <= 4, $"{place}: {offset.Message}");
                Assert.True(answer.Firings[0].Contradictions.Count == 0, $"{place}: {string.Join(' ', answer.Firings[0].Contradictions)}");
                packs++;
            }
        }

        Assert.True(packs > 100);
    }

    // Source: heat-work specification section 3: 1 o'clock is 19.4 K short on cone 6, 4 o'clock 4.4 K (facts: 35 and 8 °F). The meter said
    // that cone 6 would just be down.
    [Theory]
    [InlineData(1, -19.4, 5)]
    [InlineData(4, -4.4, 2)]
    public void A_clock_hand_is_worth_what_the_cone_maker_says(double clock, double kelvin, double reading)
    {
        var (answer, _) = Comparer.Answer(Firing(new WitnessCone(SentText.Of("6"), Clock: clock)));
        Assert.Equal(kelvin, answer.Firings[0].Offset.CelsiusDifference!.Value, 0.15);
        Assert.InRange(answer.Firings[0].Offset.StandardErrorCelsiusDifference!.Value, reading, reading + 3);
    }

    // A cone that has started lies between its first movement, 22 K short, and two o'clock, 11 K short.
    [Fact]
    public void A_cone_that_has_started_gives_a_span()
    {
        var (answer, _) = Comparer.Answer(Firing(Cone("6", "started")));
        Assert.InRange(answer.Firings[0].Offset.CelsiusDifference!.Value, -20, -13);
        Assert.Equal("started", answer.Firings[0].Observations[0].Seen);
    }

    // The meter says that cone 6 would be down, and it stands: at least 11 K cooler, and nothing speaks for more.
    [Fact]
    public void Where_cones_only_bound_the_offset_the_least_is_told()
    {
        var offset = Comparer.Answer(Firing(Cone("4", "down"), Cone("6", "standing"))).Answer.Firings[0].Offset;
        Assert.Equal(-11, offset.CelsiusDifference!.Value, 0.2);
        Assert.Equal(-11, offset.AtMostCelsiusDifference!.Value, 0.2);
        Assert.True(offset.AtLeastCelsiusDifference < -30);
    }

    [Fact]
    public void Contradictions_are_capped()
    {
        string[] cones = ["010", "09", "08", "07", "06", "05", "04", "03", "02", "01", "1", "2", "3", "4", "5", "6", "7", "8", "9", "10"];
        var (answer, _) = Comparer.Answer(Firing([.. cones.Select((c, i) => Cone(c, i == 0 ? "standing" : "down"))]));
        Assert.Equal(11, answer.Firings[0].Contradictions.Count);
        Assert.StartsWith("09 went", answer.Firings[0].Contradictions[0].ToString()[5..], StringComparison.Ordinal);
        Assert.Contains("more contradictions", answer.Firings[0].Contradictions[^1].ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Thirty_cones_are_read_and_thirty_one_are_too_many()
    {
        Assert.Equal(30, Comparer.Answer(Firing([.. Enumerable.Repeat(Cone("6", "down"), 30)])).Answer.Firings[0].Observations.Count);
        Assert.Throws<RefusedException>(() => Comparer.Answer(Firing([.. Enumerable.Repeat(Cone("6", "down"), 31)])));
    }

    private static CompareRequest Firing(params WitnessCone[] cones) =>
        new() { Units = "C", Segments = [new(60, 1222)], Observations = cones };

    private static WitnessCone Cone(string cone, string look) => new(SentText.Of(cone), look);
}
