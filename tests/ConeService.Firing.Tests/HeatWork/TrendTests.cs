using ConeService.Contract.Answers;
using ConeService.Contract.HeatWork;
using ConeService.Firing.HeatWork;
using ConeService.Firing.Tests.Support;
using MathNet.Numerics.Distributions;

namespace ConeService.Firing.Tests.HeatWork;

/// <summary>An offset that changes from firing to firing.</summary>
public class TrendTests
{
    private static readonly HeatWorkComparer Comparer = new(new(Reference.Charts));

    [Theory]
    [InlineData(0.3, 1)]
    [InlineData(12.706, 1)]
    [InlineData(2, 2)]
    [InlineData(-2.776, 4)]
    [InlineData(3, 7)]
    [InlineData(1.1, 48)]
    public void The_t_distribution_is_that_of_MathNet(double t, int freedom) =>
        Assert.Equal(2 * StudentT.CDF(0, 1, freedom, -Math.Abs(t)), StudentDistribution.Beyond(t, freedom), 1e-10);

    // Source: heat-work specification section 4: six firings with cone 6 at 5:30, 5, 4, 3, 2 and 1 o'clock are a drift, not a mean.
    [Fact]
    public void A_cone_that_stands_straighter_each_time_is_a_drift()
    {
        var answer = Compare(5.5, 5, 4, 3, 2, 1);
        var trend = answer.Trend!;
        Assert.True(trend.Drifts);
        // 1 o'clock is 19.4 K and 4 o'clock 4.4 K short on cone 6 (section 3): the change lies between what the ends and the fast part say.
        Assert.InRange(trend.ChangeCelsiusDifference, -19.4 / 5, -1);
        Assert.InRange(trend.LatestCelsiusDifference, -19.4, -11);
        Assert.Equal(6, trend.LatestFiring);
        Assert.InRange(trend.Chance, 0, 0.05);
        Assert.Contains("thermocouple", trend.Suggests!.ToString(), StringComparison.Ordinal);
        Assert.Contains("not to be corrected by", answer.Pooled!.Message.ToString(), StringComparison.Ordinal);
    }

    // The line and its errors against a weighted regression by matrices, of offsets that the firings themselves give.
    [Fact]
    public void The_line_is_that_of_weighted_least_squares()
    {
        var answer = Compare(5.5, 5, 4, 3, 2, 1);
        var n = answer.Firings.Count;
        var y = answer.Firings.Select(f => f.Offset.CelsiusDifference!.Value).ToArray();
        var w = answer.Firings.Select(f => Math.Pow(f.Offset.StandardErrorCelsiusDifference!.Value, -2)).ToArray();
        var design = CreateMatrix(n);
        var weights = MathNet.Numerics.LinearAlgebra.Matrix<double>.Build.DenseOfDiagonalArray(w);
        var inverse = (design.Transpose() * weights * design).Inverse();
        var line = inverse * design.Transpose() * weights * MathNet.Numerics.LinearAlgebra.Vector<double>.Build.Dense(y);
        var rest = MathNet.Numerics.LinearAlgebra.Vector<double>.Build.Dense(y) - (design * line);
        var scatter = (rest * (weights * rest)) / (n - 2);
        Assert.Equal(line[1], answer.Trend!.ChangeCelsiusDifference, 0.02);
        Assert.Equal(line[0] + line[1], answer.Trend.FirstCelsiusDifference, 0.05);
        Assert.Equal(line[0] + (6 * line[1]), answer.Trend.LatestCelsiusDifference, 0.05);
        Assert.Equal(Math.Sqrt(scatter * inverse[1, 1]), answer.Trend.ChangeStandardErrorCelsiusDifference, 0.02);
    }

    [Fact]
    public void Firings_that_scatter_are_no_drift()
    {
        var answer = Compare(4, 3.5, 4.5, 4, 3.5, 4.5);
        Assert.False(answer.Trend!.Drifts);
        Assert.Null(answer.Trend.Suggests);
        Assert.DoesNotContain("corrected by", answer.Pooled!.Message.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Equal_firings_are_no_drift_and_two_make_no_trend()
    {
        var trend = Compare(4, 4, 4).Trend!;
        Assert.Equal((0.0, false, 1.0), (trend.ChangeCelsiusDifference, trend.Drifts, trend.Chance));
        Assert.Null(Compare(5, 1).Trend);
    }

    private static MathNet.Numerics.LinearAlgebra.Matrix<double> CreateMatrix(int firings) =>
        MathNet.Numerics.LinearAlgebra.Matrix<double>.Build.Dense(firings, 2, (row, column) => column == 0 ? 1 : row + 1);

    private static CompareAnswer Compare(params double[] hands) => Comparer.Answer(new CompareRequest
    {
        Firings = [.. hands.Select(h => new WitnessedFiring
        {
            Units = "C", Segments = [new(60, 1222)], Observations = [new(SentText.Of("6"), Clock: h)],
        })],
    }).Answer;
}
