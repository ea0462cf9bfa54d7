using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Cones;

namespace ConeService.Firing.Schedules;

/// <summary>Which templates a list shows.</summary>
/// <param name="Kind">The kind of firing; null for all.</param>
/// <param name="Cone">A cone that the template can be fitted to; null for all.</param>
/// <param name="Atmosphere">The atmosphere in which the ware matures; null for all.</param>
internal sealed record ScheduleFilter(FiringKind? Kind = null, Cone? Cone = null, Atmosphere? Atmosphere = null)
{
    /// <summary>Reads a filter from query parameters.</summary>
    /// <exception cref="RefusedException">A word or cone is unknown; carries every finding.</exception>
    public static ScheduleFilter Read(ConeScale scale, string? kind, string? cone, string? atmosphere)
    {
        var findings = new List<Finding>();
        Cone? read = null;
        if (!string.IsNullOrWhiteSpace(cone))
        {
            if (scale.TryRead(cone, "cone", out var found, out var wrong)) read = found;
            else findings.Add(wrong!);
        }

        var filter = new ScheduleFilter(
            Word<FiringKind>(kind, "firingKind", findings), read, Word(atmosphere, "atmosphere", findings, Atmospheres.OfFirings));
        return findings.Count == 0 ? filter : throw new RefusedException(findings);
    }

    /// <summary>True when a template passes.</summary>
    public bool Passes(Schedule schedule) =>
        (Kind is null || schedule.Row.Kind == Kind)
        && (Cone is not { } cone || schedule.Takes(cone))
        && (Atmosphere is null || schedule.Row.Atmosphere == Atmosphere);

    private static T? Word<T>(string? text, string field, List<Finding> findings, IReadOnlyList<T>? of = null)
        where T : struct, Enum
    {
        if (string.IsNullOrWhiteSpace(text)) return null;
        if (EnumWords.TryRead(text.Trim(), of, out var value)) return value;
        var words = EnumWords.All(of);
        findings.Add(new(
            FindingCodes.WordUnknown, field, text,
            Message.Of("schedules.word-unknown", ("sent", text), ("parameter", field)), Message.Verbatim(words),
            NearMatches.Find(text, words) is [var near, ..] ? Message.Of("answers.near-match", ("near", near)) : null));
        return null;
    }
}
