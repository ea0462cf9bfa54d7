using ConeService.Contract.Loads;
using ConeService.Contract.Plans;
using ConeService.Data;
using ConeService.Planning.Tests.Support;

namespace ConeService.Planning.Tests.Digest;

/// <summary>What no firing takes is told which firing would, and not what an arbitrary one has against it.</summary>
public sealed class WantedTests
{
    private static readonly PlanEffort Steps = new(Seconds: 0, Steps: 50, Workers: 1);

    private static readonly PlanKiln Electric = Studio.Kiln() with
    {
        Kiln = Studio.Kiln().Kiln! with { MaxCone = "8" },
        Firings = [new("bisque", "06", "oxidation"), new("glaze", "6", "oxidation"), new("glaze", "04", "oxidation")],
    };

    private static async Task<UndonePieces> Undone(PieceRequest piece, PlanKiln? kiln = null)
    {
        var request = Studio.Request(new PlanPiece(piece)) with { Kilns = [kiln ?? Electric] };
        return Assert.Single((await new Planner(Studio.Reference).PlanAsync(request, Steps)).Unplanned);
    }

    [Fact]
    public async Task A_celadon_in_an_electric_studio_needs_a_reduction_firing_and_is_not_told_of_the_bisque()
    {
        var left = await Undone(new("celadon", 1, "high-fire-porcelain", null, [new("celadon")], "bisqued", Size: new(90, 80)));

        // Celadon 8 to 12, high-fire porcelain 9 to 12.
        var needed = left.NeededFirings.First(f => f is { FiringKind: FiringKind.Glaze, Atmosphere: Atmosphere.Reduction });
        Assert.Equal(("9", "12"), (needed.Cones.Min, needed.Cones.Max));
        Assert.Contains(KilnHeat.Gas, needed.KilnHeats);
        Assert.DoesNotContain(KilnHeat.Electric, needed.KilnHeats);
        Assert.Contains("glaze firing in reduction, cone 9 to 12", left.Needs!.ToString(), StringComparison.Ordinal);
        Assert.NotEmpty(left.LoadReasons);
        Assert.DoesNotContain(left.LoadReasons, r => r.Parameters.FiringCone is "06" or "04");
    }

    [Fact]
    public async Task What_a_kiln_could_fire_and_has_not_on_its_menu_names_the_kiln()
    {
        var cup = new PieceRequest("cup", 1, "mid-range-stoneware-light", State: "bone-dry", Size: new(90, 80));
        var left = await Undone(cup, Electric with { Firings = [new("glaze", "6", "oxidation")] });

        Assert.Equal(FiringKind.Bisque, left.NeededFirings[0].FiringKind);
        Assert.Contains("one could fire it", left.Needs!.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_piece_higher_than_every_kiln_is_too_big_and_told_by_how_much()
    {
        var left = await Undone(new("tall", 1, "mid-range-stoneware-light", State: "bone-dry", Size: new(700, 150)));

        Assert.Equal(WaitReason.TooBigForKiln, left.Reason);
        Assert.Empty(left.NeededFirings);
        // 700 mm and 6 mm above it; 600 mm less 25 mm below the lid and a shelf of 20 mm.
        Assert.Contains("706 mm", left.Needs!.ToString(), StringComparison.Ordinal);
        Assert.Contains("555 mm", left.Needs.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Leather_hard_ware_is_told_to_dry()
    {
        var left = await Undone(new("wet", 1, "mid-range-stoneware-light", State: "leather-hard", Size: new(90, 80)));

        Assert.Empty(left.NeededFirings);
        Assert.Contains("dry", left.Needs!.ToString(), StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task Hot_ware_in_a_cool_kiln_is_told_the_cone()
    {
        var left = await Undone(new(
            "hot", 1, "high-fire-porcelain", null, [new("high-fire-clear")], "bisqued", Size: new(90, 80)));

        Assert.Equal(("glaze", Atmosphere.Oxidation), (EnumWords.Word(left.NeededFirings[0].FiringKind), left.NeededFirings[0].Atmosphere));
        Assert.Contains("No kiln of this plan", left.Needs!.ToString(), StringComparison.Ordinal);
    }
}
