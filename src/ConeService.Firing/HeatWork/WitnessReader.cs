using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Problems;
using ConeService.Contract.Requests;
using ConeService.Contract.Texts;
using ConeService.Firing.Cones;
using ConeService.Firing.Reading;

namespace ConeService.Firing.HeatWork;

/// <summary>A witness cone that was read.</summary>
/// <param name="Cone">The cone.</param>
/// <param name="Look">down, started or standing; null when the lean was given.</param>
/// <param name="Degrees">The lean, degrees; null for a look.</param>
/// <param name="Field">JSON pointer to it.</param>
internal sealed record Witness(Cone Cone, string? Look, double? Degrees, string Field)
{
    /// <summary>The leans that it may have had, degrees.</summary>
    public (double Least, double Most) Leans => Look switch
    {
        "down" => (90, 90),
        "started" => (8, ConeBend.StandingDegrees),
        "standing" => (0, ConeBend.StandingDegrees),
        _ => (Degrees!.Value, Degrees.Value),
    };
}

/// <summary>Reads what witness cones looked like.</summary>
internal static class WitnessReader
{
    private const double SetDegrees = 8;
    private const double DownDegrees = 90;
    private static readonly string[] Looks = ["down", "started", "standing"];

    /// <summary>Reads every observation of a firing.</summary>
    public static List<Witness> Read(ConeScale scale, WitnessedFiring firing, string at, List<Finding> findings)
    {
        var witnesses = new List<Witness>();
        if (firing.Id is { } id && Naming.Check(at + "/id", "id", id) is { } wrongId) findings.Add(wrongId);
        if (firing.Observations is not { Count: > 0 and <= HeatWorkLimits.MostObservations })
        {
            findings.Add(new(
                FindingCodes.ObservationUnreadable, at + "/observations", null, Message.Of("heat-work.no-witness-cones"),
                Message.Verbatim(["[{\"cone\": \"6\", \"clock\": 4}]"])));
            return witnesses;
        }

        foreach (var (i, sent) in firing.Observations.Index())
        {
            var field = $"{at}/observations/{i}";
            if (sent is null || sent.Cone.IsAbsent)
            {
                findings.Add(new(
                    FindingCodes.ConeUnreadable, field + "/cone", null, Message.Of("heat-work.witness-without-cone"),
                    Message.Verbatim(["\"6\"", "\"04\""])));
            }
            else if (!ConeInput.TryRead(scale, sent.Cone, field + "/cone", out var cone, out var wrong)) findings.Add(wrong!);
            else if (Check(sent, field) is { } finding) findings.Add(finding);
            else witnesses.Add(Of(cone, sent, field));
        }

        return witnesses;
    }

    private static Finding? Check(WitnessCone sent, string field)
    {
        var given = (sent.Look is null ? 0 : 1) + (sent.Clock is null ? 0 : 1) + (sent.Degrees is null ? 0 : 1);
        if (given != 1)
        {
            return new(
                FindingCodes.ObservationUnreadable, field, null, Message.Of("heat-work.one-observation"),
                Message.Verbatim(
                [
                    "\"look\": \"down\"", "\"look\": \"started\"", "\"look\": \"standing\"", "\"clock\": 3", "\"degrees\": 45",
                ]));
        }

        if (sent.Look is not null && !Looks.Contains(sent.Look))
        {
            return new(
                FindingCodes.ObservationUnreadable, field + "/look", sent.Look, Message.Of("heat-work.look-unknown", ("look", sent.Look)),
                Message.Verbatim(Looks));
        }

        if (sent.Clock is { } clock && !Bounds.Of<WitnessCone>(nameof(WitnessCone.Clock)).Contain(clock))
        {
            return HeatSettings.OutOfRange(field + "/clock", clock, Message.Of("heat-work.clock-allowed"));
        }

        if (sent.Degrees is { } degrees && !Bounds.Of<WitnessCone>(nameof(WitnessCone.Degrees)).Contain(degrees))
        {
            return HeatSettings.OutOfRange(field + "/degrees", degrees, Message.Of("heat-work.degrees-allowed"));
        }

        return null;
    }

    // A lean at either end is no measurement but a bound: the cone could have been there long.
    private static Witness Of(Cone cone, WitnessCone sent, string field)
    {
        var degrees = sent.Degrees ?? sent.Clock * 15;
        var look = sent.Look ?? (degrees >= DownDegrees ? "down" : degrees <= SetDegrees ? "standing" : null);
        return new(cone, look, look is null ? degrees : null, field);
    }
}
