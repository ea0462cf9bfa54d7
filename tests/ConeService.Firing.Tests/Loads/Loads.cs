using ConeService.Contract.Answers;
using ConeService.Contract.Kilns;
using ConeService.Contract.Loads;
using ConeService.Firing.Loads;
using ConeService.Firing.Tests.Support;
using Kiln = ConeService.Contract.Kilns.Kiln;

namespace ConeService.Firing.Tests.Loads;

/// <summary>Loads in few words.</summary>
internal static class Loads
{
    public static LoadCheck Check { get; } = new(Reference.Charts);

    public static Kiln Electric { get; } = Kiln("electric", "10", "oxidation;neutral");

    public static Kiln Gas { get; } = Kiln("gas", "13", "oxidation;neutral;reduction");

    public static SentText T(string? text) => SentText.Of(text);

    public static SentText Number(string digits) => digits.Length == 0 ? default : new(digits, SentKind.Number);

    public static Kiln Kiln(string heat, string maxCone, string atmospheres, Interior? interior = null) =>
        new(Heat: heat, MaxCone: maxCone, Atmospheres: [.. atmospheres.Split(';').Select(T)], Interior: interior);

    public static FiringRequest Firing(string kind, string cone, string atmosphere) => new(T(kind), T(cone), T(atmosphere));

    public static PieceRequest Piece(string id, string body, string coats = "", string state = "bisqued", string? use = null) =>
        new(
            T(id), default, T(body), null,
            [.. coats.Split(';', StringSplitOptions.RemoveEmptyEntries).Select(c => new CoatRequest(T(c)))],
            T(state), Use: T(use));

    public static LoadRequest Load(Kiln kiln, FiringRequest firing, params PieceRequest[] pieces) => new(kiln, firing, pieces);

    public static Verdict VerdictOf(this LoadAnswer answer, string id) => answer.Pieces.Single(p => p.Id == id).Verdict;
}
