using ConeService.Data;
using ConeService.Firing;

namespace ConeService.Api.Features.Cards;

/// <summary>How many printed cells are told from memory, for every page that shows some.</summary>
internal static class FromMemory
{
    /// <summary>The sentence: of the chart that answers by default, and of all charts.</summary>
    public static string Of(FiringReference reference)
    {
        var (all, chart) = (reference.Dataset.EndPoints, reference.Cones.DefaultChart);
        var own = all.Where(e => e.Chart == chart).ToList();
        return $"From memory, not seen in print: {Count(own)} of the {own.Count} figures of the default chart, {Count(all)} of the "
            + $"{all.Count} of all charts.";
    }

    private static int Count(IEnumerable<EndPointRow> cells) => cells.Count(e => e.Confidence == Confidence.FromMemory);
}
