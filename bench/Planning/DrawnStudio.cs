using System.Globalization;
using ConeService.Contract.Kilns;
using ConeService.Contract.Loads;
using ConeService.Contract.Plans;

namespace ConeService.Bench.Planning;

/// <summary>Invented studios, drawn at random: courses with their own days and dates, ware of many sizes, glazes that may not go
/// together.</summary>
internal static class DrawnStudio
{
    private static readonly DateTime Monday = new(2026, 11, 30, 0, 0, 0, DateTimeKind.Unspecified);

    // Height, width, depth (0: round), in mm; how often in a hundred.
    private static readonly (int Height, int Width, int Depth, int Often)[] Ware =
    [
        (95, 85, 0, 30), (70, 150, 0, 22), (30, 260, 0, 10), (220, 120, 0, 8), (180, 200, 0, 5), (15, 150, 150, 8), (140, 180, 130, 7),
            (60, 90, 0, 10),
    ];

    // Diameter or width, depth (0: round), height, of the room, mm.
    private static readonly (int Width, int Depth, int Height)[] Rooms =
        [(450, 0, 460), (590, 0, 690), (710, 0, 690), (800, 600, 900)];

    /// <summary>A studio.</summary>
    /// <param name="pieces">Pieces in its backlog.</param>
    /// <param name="kilns">Kilns, by place among the rooms.</param>
    /// <param name="weeks">Weeks planned.</param>
    /// <param name="number">Which of those drawn.</param>
    public static PlanRequest Of(int pieces, IReadOnlyList<int> kilns, int weeks, int number)
    {
        var random = new Random(number);
        var days = 7 * weeks;
        var courses = Enumerable.Range(0, Math.Clamp(pieces / 15, 3, 20)).Select(_ => Course(random, days)).ToList();
        return new(
            new(At(0, 0), At(days, 0)),
            [.. kilns.Select((room, i) => Kiln(room, $"kiln {i + 1}"))],
            [.. Enumerable.Range(0, pieces).Select(i => Piece(random, i, courses[random.Next(courses.Count)]))],
            "Europe/Berlin",
            [.. Enumerable.Range(0, days + 7).Where(d => d % 7 != 6).Select(d => new PlanSpan(At(d, 9), At(d, 18)))]);
    }

    private static (int Ready, int? Due) Course(Random random, int days)
    {
        var ready = random.Next(2) == 0 ? 0 : random.Next((days / 2) + 1);
        return (ready, random.Next(5) < 2 ? Math.Min(days, Math.Max(ready + 9, random.Next(days / 3, days + 1))) : null);
    }

    private static PlanKiln Kiln(int room, string id)
    {
        var (width, depth, height) = Rooms[room];
        var litres = depth == 0 ? Math.PI / 4 * width * width * height / 1e6 : width * depth * height / 1e6;
        var inside = depth == 0
            ? new Interior(height, DiameterMillimetres: width)
            : new Interior(height, WidthMillimetres: width, DepthMillimetres: depth);
        var shelves = depth == 0
            ? new KilnShelves(Layers: height / 90, PerLayer: 1, ThicknessMillimetres: 20, DiameterMillimetres: width - 60)
            : new KilnShelves(Layers: height / 90, PerLayer: 1, ThicknessMillimetres: 20, WidthMillimetres: width - 60,
            DepthMillimetres: depth - 60);
        double Energy(double each) => Math.Round(each * litres, 1);
        return new(
            new Kiln(id, "electric", ["oxidation"], "10", Interior: inside, Shelves: shelves),
            [
                new("bisque", "06", "oxidation", Minutes: 1260, KilowattHours: Energy(0.24)),
                new("glaze", "6", "oxidation", Minutes: 1440, KilowattHours: Energy(0.36)),
                new("glaze", "05", "oxidation", Minutes: 1140, KilowattHours: Energy(0.26)),
            ]);
    }

    private static PlanPiece Piece(Random random, int number, (int Ready, int? Due) course)
    {
        var size = Drawn(random);
        var low = random.Next(6) == 0;
        var body = low ? "white-earthenware" : "mid-range-stoneware-light";
        var coat = low ? new CoatRequest("low-fire-boron-clear") : random.Next(20) switch
        {
            < 12 => new CoatRequest("mid-range-gloss"),
            < 15 => new CoatRequest("mid-range-gloss", Contains: ["tin"]),
            < 18 => new CoatRequest("mid-range-gloss", Contains: ["chrome"]),
            _ => new CoatRequest("mid-range-matte"),
        };
        var bisqued = random.Next(3) == 0;
        return new(
            new PieceRequest(
                string.Create(CultureInfo.InvariantCulture, $"piece {number + 1}"), 1, body, null, bisqued ? [coat] : [], bisqued
                    ? "bisqued" : "bone-dry",
                Size: size, Use: "decorative"),
            bisqued ? null : [new LaterCoats([coat])],
            Ready: At(course.Ready, 8),
            Due: course.Due is { } due ? At(due, 18) : null,
            HandlingMinutes: 2880);
    }

    private static SizeRequest Drawn(Random random)
    {
        var at = random.Next(100);
        foreach (var (height, width, depth, often) in Ware)
        {
            at -= often;
            if (at >= 0) continue;
            int Near(int length) => (int)Math.Round(length * (0.85 + (0.3 * random.NextDouble())) / 10) * 10;
            return depth == 0
                ? new(Math.Max(15, Near(height)), Near(width))
                : new(Math.Max(15, Near(height)), Near(width), Near(depth));
        }

        throw new InvalidOperationException("How often comes to a hundred.");
    }

    private static string At(int day, int hour) =>
        Monday.AddDays(day).AddHours(hour).ToString("yyyy-MM-ddTHH:mm", CultureInfo.InvariantCulture);
}
