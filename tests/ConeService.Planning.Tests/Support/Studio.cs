using System.Text.Json;
using ConeService.Contract.Json;
using ConeService.Contract.Kilns;
using ConeService.Contract.Loads;
using ConeService.Contract.Plans;
using ConeService.Data;
using ConeService.Firing;
using ConeService.Planning.Digest;
using ConeService.Planning.Requests;

namespace ConeService.Planning.Tests.Support;

/// <summary>An invented studio: an electric kiln 600 mm wide and high, mugs and bowls of two clays.</summary>
internal static class Studio
{
    public static FiringReference Reference { get; } = FiringReference.Open(DatasetLoader.LoadEmbedded());

    /// <summary>samples/studio: 120 pieces, three kilns, four weeks.</summary>
    public static PlanRequest Sample { get; } = JsonSerializer.Deserialize<PlanRequest>(
        File.ReadAllText(Path.Combine(Repository.Root, "samples", "studio", "request.json")), ConeJson.Options)!;

    public static PlanKiln Kiln(string id = "one") => new(
        new Kiln(id, "electric", ["oxidation"], "10", Interior: new(600, DiameterMillimetres: 600),
            Shelves: new KilnShelves(Layers: 6, PerLayer: 1, ThicknessMillimetres: 20, DiameterMillimetres: 540)),
        [new("bisque", "06", "oxidation", Minutes: 1200, KilowattHours: 60),
            new("glaze", "6", "oxidation", Minutes: 1320, KilowattHours: 90)]);

    public static PlanPiece Mug(string id, int count, string? due = null, bool bisqued = false) => new(
        new PieceRequest(
            id, count, "mid-range-stoneware-light", null, bisqued ? [new("mid-range-gloss")] : [], bisqued ? "bisqued" : "bone-dry",
            Size: new(100, 80), Use: "decorative"),
        bisqued ? null : [new LaterCoats([new("mid-range-gloss")])], Due: due, HandlingMinutes: 2880);

    public static PlanRequest Request(params PlanPiece[] pieces) => new(
        new("2026-12-01T00:00", "2026-12-15T00:00"), [Kiln()], pieces, "Europe/Berlin");

    public static Digested Digest(PlanRequest request) => new Digester(Reference).Digest(request);

    public static IReadOnlyList<string> Findings(PlanRequest request) =>
        [.. Assert.Throws<PlanRefusedException>(() => Digest(request)).Findings.Select(f => $"{f.Pointer} {f.Code}")
            .Order(StringComparer.Ordinal)];
}
