using ConeService.Contract.Study;
using ConeService.Data;

namespace ConeService.Firing.Study;

/// <summary>Rows of faults, terms and landmarks as answers.</summary>
internal static class StudyAnswers
{
    public static FaultCause Of(FaultCauseRow row) => new(
        row.Id, row.Cause, row.Tell, row.Change, row.Landmarks, row.Sources, row.Confidence, row.Note);

    public static Fault Of(FaultRow row, IEnumerable<FaultCauseRow> causes) => new(
        row.Id, row.Fault, row.Synonyms, row.Tell, row.Stages, [.. causes.Select(Of)], row.Unlike, row.Cautions, row.Sources,
        row.Confidence, row.Note);

    public static GasRelease Of(GasReleaseRow row) => new(
        row.Id, row.Substance, row.Reaction, row.Gases, row.CelsiusLow, row.CelsiusHigh, row.Atmosphere, row.RateCelsiusPerHour,
        row.Landmark, row.Cautions, row.Sources, row.Confidence, row.Note);

    public static OxideExpansion Of(OxideExpansionRow row) => new(
        row.Id, row.Name, row.Oxide, row.Effect, row.UpToPercent, row.Sources, row.Confidence, row.Note);

    public static Term Of(TermRow row) => new(
        row.Id, row.Term, row.Synonyms, row.Meaning, row.See, row.Href is { } path ? new(path) : null, row.Sources, row.Confidence,
        row.Note);

    public static Landmark Of(LandmarkRow row) => new(
        Id: row.Id,
        Name: row.Landmark,
        Phase: row.Phase,
        CelsiusMin: row.CelsiusLow,
        CelsiusMax: row.CelsiusHigh,
        RateMin: row.RateLowCelsiusPerHour,
        RateMax: row.RateHighCelsiusPerHour,
        SlowFromCelsius: row.SlowFromCelsius,
        SlowToCelsius: row.SlowToCelsius,
        HoldMin: row.HoldLowCelsius,
        HoldMax: row.HoldHighCelsius,
        MinutesMin: row.HoldLowMinutes,
        MinutesMax: row.HoldHighMinutes,
        Advice: row.Advice,
        Effect: row.Effect,
        Cautions: row.Cautions,
        Sources: row.Sources,
        Confidence: row.Confidence,
        Note: row.Note);
}
