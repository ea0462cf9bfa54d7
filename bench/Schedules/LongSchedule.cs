using ConeService.Data;
using ConeService.Firing.Schedules;

namespace ConeService.Bench.Schedules;

/// <summary>An invented schedule of twenty segments: sixteen up to cone 6, a drop, and three down.</summary>
internal static class LongSchedule
{
    public static Schedule Make()
    {
        var segments = new List<ScheduleSegmentRow>();
        void Add(FiringStage stage, decimal rate, decimal? celsius, decimal hold = 0, decimal? below = null) => segments.Add(new(
            "twenty", segments.Count + 1, stage, rate, celsius, celsius is null ? "6" : null, below, hold, "invented",
            Atmosphere.Oxidation, null, VentSetting.AsNormal, null, [], ["common-practice"], Confidence.Estimate, null));

        Add(FiringStage.Drying, 40, 90, 120);
        for (var i = 1; i < 15; i++) Add(FiringStage.Rise, 40 + (5 * i), 90 + (72 * i), i % 3 == 0 ? 10 : 0);
        Add(FiringStage.Maturing, 60, null, 10);
        Add(FiringStage.DropAndHold, 200, null, 20, below: 60);
        Add(FiringStage.SlowCooling, 100, 1000, 15);
        Add(FiringStage.SlowCooling, 60, 900);
        Add(FiringStage.SlowCooling, 50, 760);
        return new(
            new(
                "twenty", "Twenty segments", FiringKind.Single, "6", "4", "7", Confidence.Estimate, Atmosphere.Oxidation,
                [KilnHeat.Electric], [PieceState.BoneDry], null, null, null, null, ["common-practice"], Confidence.Estimate, null),
            segments);
    }
}
