using System.Globalization;
using ConeService.Contract.Answers;
using ConeService.Contract.HeatWork;
using ConeService.Firing.Cones;
using ConeService.Firing.HeatWork;
using ConeService.Firing.Tests.Support;
using MathNet.Numerics.Distributions;
using static ConeService.Firing.Tests.HeatWork.Firings;

namespace ConeService.Firing.Tests.HeatWork;

public class UncertaintyTests
{
    // Sources: IEC 60584 and ASTM E230 by the shared check values chk021 … chk040.
    [Fact]
    public void Every_tolerance_is_that_of_its_standard()
    {
        foreach (var row in CsvFile.Read("Vectors/thermocouple-tolerances.csv"))
        {
            double Number(string name) => double.Parse(row[name], CultureInfo.InvariantCulture);
            var tolerance = Reference.Dataset.ThermocoupleTolerances
                .Single(t => (t.Type, t.Standard, t.Class) == (row["type"], row["standard"], row["class"]));
            Assert.Equal(Number("tolerance_celsius"), ThermocoupleTolerance.At(tolerance, Number("celsius")), Number("precision"));
        }
    }

    [Theory]
    [InlineData("K", "1", 1000, true)]
    [InlineData("K", "1", 1000.5, false)]
    [InlineData("K", "2", 1222, false)]
    [InlineData("S", "2", 1400, true)]
    public void A_standard_covers_its_range(string type, string kind, double celsius, bool covered) =>
        Assert.Equal(
            covered,
            ThermocoupleTolerance.Covers(
                Reference.Dataset.ThermocoupleTolerances.Single(t => (t.Type, t.Standard, t.Class) == (type, "iec-60584", kind)),
                celsius));

    [Theory]
    [InlineData(-8)]
    [InlineData(-5.01)]
    [InlineData(-4.99)]
    [InlineData(-1)]
    [InlineData(0)]
    [InlineData(2.5)]
    public void The_normal_distribution_is_that_of_MathNet(double z)
    {
        Assert.Equal(Normal.CDF(0, 1, z), NormalDistribution.Below(z), 1e-7);
        Assert.Equal(Math.Log(Normal.CDF(0, 1, z)), NormalDistribution.LogBelow(z), 3e-3);
    }

    // Source: heat-work specification section 4: Monte Carlo against Φ(m/σ), worst difference 0.05. The draws disturb
    // the temperatures, the chart and the slope of the curve themselves; the closed form only adds variances.
    [Theory]
    [InlineData("6", 60, 1222, 0)]
    [InlineData("6", 60, 1215, 10)]
    [InlineData("6", 150, 1235, 0)]
    [InlineData("04", 108, 1070, 0)]
    [InlineData("04", 60, 1050, 40)]
    [InlineData("10", 60, 1290, 5)]
    [InlineData("018", 100, 715, 0)]
    public void The_probability_agrees_with_a_simulation(string name, double rate, double peak, double holdMinutes)
    {
        const int draws = 4000;
        var calculator = new HeatWorkCalculator(Reference.Charts);
        var result = calculator.Answer(new HeatWorkRequest
        {
            Units = "C",
            Segments = [new(rate, peak, holdMinutes)],
            Thermocouple = new("K", "iec-60584", SentText.Of("2"), 30),
        });
        var answer = result.Answer.Cones.Single(c => c.Cone == name);
        var (curve, history) = (Curve(name), Ramp(rate, peak, holdMinutes).ToHistory());
        var random = new Random(20261125);
        var a = Math.Max(2.5, 0.0075 * peak);
        var down = 0;
        for (var i = 0; i < draws; i++)
        {
            var shift = ((2 * random.NextDouble()) - 1) * a; // The tolerance as a rectangle.
            shift += Gaussian(random) * Math.Min(10, 0.1 * 30) + (Gaussian(random) * 2.5) + (Gaussian(random) * 2.3);
            var steeper = new Steeper(curve, Math.Exp(0.2 * Gaussian(random)));
            if (HeatIntegral.Progress(new ShiftedCurve(steeper, -shift), history) >= 1) down++;
        }

        Assert.Equal((double)down / draws, answer.ProbabilityDown, 0.05);
    }

    private static double Gaussian(Random random) => Normal.InvCDF(0, 1, random.NextDouble());

    // K′ = 60·(K/60)^a, as the specification has it.
    private sealed class Steeper(BendingCurve curve, double exponent) : BendingCurve
    {
        private static readonly double Log60 = Math.Log(60);

        public override double KnotPhase => curve.KnotPhase;

        public override double LogK(double temperature) => Log60 + (exponent * (curve.LogK(temperature) - Log60));

        public override double Slope(double temperature) => exponent * curve.Slope(temperature);

        public override double Inverse(double logK) => curve.Inverse(Log60 + ((logK - Log60) / exponent));
    }
}
