using ConeService.Contract.Loads;
using ConeService.Data;
using ConeService.Firing.Tests.Support;
using CsCheck;
using Kiln = ConeService.Contract.Kilns.Kiln;

namespace ConeService.Firing.Tests.Loads;

/// <summary>Half the loads as a studio sends them, half as none would: anything beside anything.</summary>
internal static class LoadGen
{
    private static readonly string[] Whole =
        [.. Reference.Dataset.Cones.Where(c => c.WholeStep is not null).OrderBy(c => c.WholeStep).Select(c => c.Id)];

    public static Gen<string> Cone { get; } = Gen.Int[0, Whole.Length - 1].Select(i => Whole[i]);

    public static Gen<Kiln> Kiln { get; } = Gen.Select(
        Word<KilnHeat>(),
        Cone,
        Any("oxidation", "oxidation;neutral", "oxidation;neutral;reduction", "reduction"),
        (h, c, a) => Loads.Kiln(h, c, a));

    public static Gen<FiringRequest> Firing { get; } = Gen.Select(Word<FiringKind>(), Cone, Word(Atmospheres.OfFirings), Loads.Firing);

    public static Gen<PieceRequest> Piece { get; } = Gen.Select(
        Any([.. Reference.Dataset.ClayBodies.Select(b => b.Id), "no-such-clay"]),
        Gen.OneOf(Any([.. Reference.Dataset.Glazes.Select(g => new CoatRequest(Loads.T(g.Id)))]), Own).List[0, 2],
        Any("bone-dry", "bisqued", "bisqued", "glaze-fired", "leather-hard"),
        Any<string?>(null, "food", "decorative"),
        (body, coats, state, use) => Loads.Piece("", body, "", state, use) with { Coats = [.. coats] });

    public static Gen<LoadRequest> Load { get; } = Gen.OneOf(
        Gen.Select(Kiln, Firing, Piece.List[1, 12], (k, f, p) => new LoadRequest(k, f, Named(p))),
        Gen.Select(UsualKiln, UsualFiring, UsualPiece.List[1, 12], (k, f, p) => new LoadRequest(k, f, Named(p))));

    /// <summary>The pieces with names of their own.</summary>
    public static IReadOnlyList<PieceRequest> Named(IEnumerable<PieceRequest> pieces) =>
        [.. pieces.Select((p, i) => p with { Id = Loads.T($"p{i:00}") })];

    /// <summary>A drawn load in few words, for whoever reads why a law did not hold.</summary>
    public static string Told(LoadRequest load) => string.Join('\n', [
        $"{load.Kiln!.Heat.Text} to {load.Kiln.MaxCone.Text}: {Told(load.Firing!)}",
        .. (load.Offered ?? []).Select(f => $"offered {f!.FiringKind.Text} {f.Cone.Text} {f.Atmosphere.Text}"),
        .. load.Pieces!.Select(p =>
            $"{p!.Id.Text}: {p.Body.Text}, {p.State.Text}, {p.Use.Text}, {string.Join(" + ", (p.Coats ?? []).Select(c => Told(c!)))}")]);

    private static string Told(FiringRequest firing) => $"{firing.FiringKind.Text} {firing.Cone.Text} {firing.Atmosphere.Text}";

    private static string Told(CoatRequest coat) => coat.OwnGlaze is { } own
        ? $"{own.Name.Text} with {string.Join(',', (coat.Contains ?? []).Select(t => t.Text))}"
        : $"{coat.Glaze.Text}";

    private static Gen<Kiln> UsualKiln => Any(Loads.Gas, Loads.Electric);

    private static Gen<FiringRequest> UsualFiring => Any(
        Loads.Firing("bisque", "06", "oxidation"), Loads.Firing("glaze", "04", "oxidation"), Loads.Firing("glaze", "6", "oxidation"),
        Loads.Firing("glaze", "10", "reduction"), Loads.Firing("glaze", "9", "oxidation"), Loads.Firing("overglaze", "018", "oxidation"));

    private static Gen<PieceRequest> UsualPiece => Any(
        Loads.Piece("", "red-earthenware", "", "bone-dry"),
        Loads.Piece("", "mid-range-stoneware-light", "", "bone-dry"),
        Loads.Piece("", "high-fire-porcelain", "", "bone-dry"),
        Loads.Piece("", "red-earthenware", "majolica"),
        Loads.Piece("", "white-earthenware", "low-fire-boron-clear"),
        Loads.Piece("", "mid-range-stoneware-light", "mid-range-gloss"),
        Loads.Piece("", "mid-range-porcelain", "mid-range-matte"),
        Loads.Piece("", "high-fire-porcelain", "celadon"),
        Loads.Piece("", "high-fire-stoneware-light", "tenmoku"),
        Loads.Piece("", "high-fire-stoneware-light", "iron-red"),
        Loads.Piece("", "high-fire-porcelain", "copper-red"),
        Loads.Piece("", "high-fire-stoneware-light", "shino"),
        Loads.Piece("", "high-fire-porcelain", "high-fire-clear"),
        Loads.Piece("", "high-fire-porcelain", "lustre-resinate", "glaze-fired"),
        Loads.Piece("", "white-earthenware", "china-paint", "glaze-fired"),
        Loads.Piece("", "raku-body", "raku-glaze"),
        Loads.Piece("", "salt-soda-body", "salt-vapour"),
        Loads.Piece("", "mid-range-stoneware-light", "mid-range-gloss", "leather-hard"));

    private static Gen<CoatRequest> Own => Gen.Select(
        Gen.Int[0, Whole.Length - 3], Gen.Int[0, 2], Gen.Bool, (low, width, copper) => new CoatRequest(
        OwnGlaze: new(
            Loads.T($"own {Whole[low]}"),
            new(Loads.T(Whole[low]), Loads.T(Whole[low + (width / 2)]), Loads.T(Whole[low + width]))),
        Contains: copper ? [Loads.T("copper")] : [Loads.T("tin")]));

    private static Gen<T> Any<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(i => values[i]);

    private static Gen<string> Word<T>(IReadOnlyList<T>? of = null)
        where T : struct, Enum => Any([.. EnumWords.All(of)]);
}
