using ConeService.Contract.Quantities;
using ConeService.Firing.Kilns;

namespace ConeService.Firing.HeatWork.Forecasting;

/// <summary>What is foreseen from the last sample on, which is hour 0.</summary>
/// <param name="History">The temperature; null where nothing is left to happen.</param>
/// <param name="EndHours">When the programme ends, h.</param>
/// <param name="OpeningHours">When the kiln is below the temperature of opening, h; null when that is not foreseen.</param>
/// <param name="Segments">What the kiln does in each segment; null where no kiln is modelled.</param>
/// <param name="Finishes">False when the kiln stalls.</param>
internal sealed record FiringAhead(
    HeatHistory? History, double EndHours, double? OpeningHours, IReadOnlyList<SegmentRun>? Segments, bool Finishes = true);

/// <summary>Fires what is left of a programme from the last sample on.</summary>
internal interface IFiresAhead
{
    /// <summary>Fires segments, and lets the kiln cool.</summary>
    FiringAhead Fire(IReadOnlyList<HeatSegment> segments);
}

/// <summary>A kiln that does what it is told.</summary>
/// <param name="from">Where the log ends, K.</param>
/// <param name="fullSpeed">What a segment without a rate does, K/h.</param>
/// <param name="cooling">How it cools.</param>
internal sealed class ProgrammeAhead(double from, double fullSpeed, CoolDown cooling) : IFiresAhead
{
    public FiringAhead Fire(IReadOnlyList<HeatSegment> segments)
    {
        var told = new HeatProgramme(from, segments, fullSpeed);
        var end = told.DoesSomething ? told.ToHistory().End.Hours : 0;
        var whole = told with { Cooling = cooling };
        if (!whole.DoesSomething) return new(null, 0, Cold(from) ? 0 : null, null);
        var history = whole.ToHistory();
        return new(history, end, Opening(history, end), null);
    }

    private static bool Cold(double kelvin) => kelvin - Temperature.KelvinAtZero < KilnModel.OpeningCelsius;

    // The last time it falls below; a programme that ends cold is over with its end.
    private static double? Opening(HeatHistory history, double end)
    {
        var points = history.Points;
        const double opening = KilnModel.OpeningCelsius + Temperature.KelvinAtZero;
        if (points[^1].Kelvin >= opening) return null;
        for (var i = points.Length - 1; i > 0; i--)
        {
            var (a, b) = (points[i - 1], points[i]);
            if (a.Kelvin >= opening)
                return Math.Max(end, a.Hours + ((a.Kelvin - opening) / (a.Kelvin - b.Kelvin) * (b.Hours - a.Hours)));
        }

        return end;
    }
}
