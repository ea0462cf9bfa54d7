using System.Collections.Frozen;
using System.Reflection;

namespace ConeService.Contract.Problems;

/// <summary>Every kind of problem the service answers with: one for each of <see cref="FindingCodes"/>, and no other.</summary>
public static class ProblemKinds
{
    private const int BadRequest = 400;

    // What is wrong with a question is a bad request; only what HTTP has a number of its own for stands here.
    private static readonly FrozenDictionary<string, int> OtherStatuses = new Dictionary<string, int>
    {
        [FindingCodes.BodyStalled] = 408,
        [FindingCodes.ContentEncodingUnsupported] = 415,
        [FindingCodes.ContentTypeUnsupported] = 415,
        [FindingCodes.DatasetNotServed] = 409,
        [FindingCodes.FormatNotMade] = 501,
        [FindingCodes.InternalError] = 500,
        [FindingCodes.MethodNotAllowed] = 405,
        [FindingCodes.NotAcceptable] = 406,
        [FindingCodes.NotFound] = 404,
        [FindingCodes.Renamed] = 404,
        [FindingCodes.RequestTooLarge] = 413,
        [FindingCodes.TookTooLong] = 503,
        [FindingCodes.TooBusy] = 503,
    }.ToFrozenDictionary(StringComparer.Ordinal);

    private static readonly FrozenDictionary<string, ProblemKind> ByCode = typeof(FindingCodes)
        .GetFields(BindingFlags.Public | BindingFlags.Static)
        .Select(f => (string)f.GetRawConstantValue()!)
        .Select(code => new ProblemKind(code, OtherStatuses.GetValueOrDefault(code, BadRequest)))
        .ToFrozenDictionary(k => k.Code, StringComparer.Ordinal);

    /// <summary>The kinds, by code.</summary>
    public static IReadOnlyList<ProblemKind> All { get; } = [.. ByCode.Values.OrderBy(k => k.Code, StringComparer.Ordinal)];

    /// <summary>The kind of a code, or null.</summary>
    public static ProblemKind? Find(string code) => ByCode.GetValueOrDefault(code);
}
