using ConeService.Contract.Kilns;
using ConeService.Contract.Loads;
using ConeService.Contract.Plans;

namespace ConeService.Client.Tests.Plans;

/// <summary>Questions for a plan of an invented studio.</summary>
internal static class PlanVectors
{
    /// <summary>Eight bisqued mugs and one glaze firing that can be started at one moment: there is one plan.</summary>
    public static PlanRequest One { get; } = new(
        new("2026-12-01T00:00", "2026-12-15T00:00"),
        [
            new(
                new Kiln("small", "electric", ["oxidation"], "10", Interior: new(600, DiameterMillimetres: 600)),
                [new("glaze", "6", "oxidation", Minutes: 1320, KilowattHours: 90)],
                ["2026-12-04T18:00"]),
        ],
        [Mug("mug", 8)],
        "Europe/Berlin",
        Objective: new(MinimumFillPercent: 0));

    /// <summary>Bisqued mugs with a glaze of cone 6, 100 mm high.</summary>
    public static PlanPiece Mug(string id, int count) => new(new PieceRequest(
        id, count, "mid-range-stoneware-light", null, [new("mid-range-gloss")], "bisqued", Size: new(100, 80), Use: "decorative"));
}
