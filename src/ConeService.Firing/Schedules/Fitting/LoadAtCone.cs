using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.Loads;
using ConeService.Contract.Schedules;
using ConeService.Data;
using ConeService.Firing.Cones;
using ConeService.Firing.HeatWork;
using ConeService.Firing.Loads;
using ConeService.Firing.Materials;
using SentKiln = ConeService.Contract.Kilns.Kiln;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>A load as judged at a cone.</summary>
/// <param name="Answer">The answer's part.</param>
/// <param name="Sources">Ids of the sources of its reasons.</param>
/// <param name="Assumed">What the pieces left out.</param>
internal sealed record LoadVerdict(FitLoadCheck Answer, IReadOnlyList<string> Sources, IReadOnlyList<Assumption> Assumed);

/// <summary>Asks the load check whether the pieces of a fit stand its cone; the rules are the load check's, all of them.</summary>
/// <param name="loads">The load check.</param>
/// <param name="charts">The charts, for the scale that load rules count on.</param>
internal sealed class LoadAtCone(LoadCheck loads, ConeCharts charts)
{
    private readonly PotterScale scale = new(charts.Scale);

    /// <summary>Checks the pieces at the target; null without pieces or without a target.</summary>
    /// <exception cref="RefusedException">A piece can't be read; carries every finding, with its pointer into the fit's body.</exception>
    public LoadVerdict? AtTarget(FitQuestion question, FitRequest request) =>
        request.Load?.Pieces is null || question.Target is not { } target ? null : Check(question, request, target.Cone.Cone);

    /// <summary>Reads the pieces of a fit that can't be answered for something else; none of them is judged.</summary>
    /// <exception cref="RefusedException">A piece can't be read; carries every finding, with its pointer into the fit's body.</exception>
    public LoadVerdict? Unread(Schedule schedule, FitRequest request)
    {
        if (request.Load?.Pieces is null) return null;
        var cone = schedule.Hottest is { } hottest && scale.Find(hottest) is not null ? hottest.ToString() : "6";
        try
        {
            _ = loads.Check(Asked(schedule.Row, schedule.Row.KilnHeats[0], cone, request));
        }
        catch (RefusedException refused)
        {
            IReadOnlyList<Finding> own = [.. refused.Findings.Where(f => Own(f.Field)).Select(f => f with { Field = "/load" + f.Field })];
            if (own.Count > 0) throw new RefusedException(own);
        }

        return null;
    }

    /// <summary>The same at the cone that the firing reaches, where that is hotter than the target.</summary>
    /// <param name="question">The question.</param>
    /// <param name="request">The request.</param>
    /// <param name="atTarget">The verdict at the target; null where there is none.</param>
    /// <param name="work">What the firing does to the cones.</param>
    public LoadVerdict? AtReached(FitQuestion question, FitRequest request, LoadVerdict? atTarget, ScaleWork work)
    {
        if (request.Load?.Pieces is null || work.Reached?.Cone.Cone is not { } reached) return atTarget;
        var hotter = question.Target is not { } target || reached > target.Cone.Cone;
        return hotter && scale.Find(reached) is not null ? Check(question, request, reached) : atTarget;
    }

    private LoadVerdict Check(FitQuestion question, FitRequest request, Cone cone)
    {
        var row = question.Schedule.Row;
        try
        {
            var answer = loads.Check(Asked(row, question.Heat ?? row.KilnHeats[0], cone.ToString(), request));
            return new(
                new(cone.ToString(), answer.Verdict, answer.Pieces, answer.Load.Reasons),
                answer.Sources,
                [.. answer.Assumed.Where(a => Own(a.Field)).Select(a => a with { Field = "/load" + a.Field })]);
        }
        catch (RefusedException refused)
        {
            throw new RefusedException([.. refused.Findings.Select(f => f with
            {
                Field = Own(f.Field) ? "/load" + f.Field : f.Field == "/firing/cone" ? "/cone" : f.Field,
            })]);
        }
    }

    private static LoadRequest Asked(ScheduleTemplateRow row, KilnHeat heat, string cone, FitRequest request)
    {
        var atmosphere = EnumWords.Word(Atmospheres.OfFirings.Contains(row.Atmosphere) ? row.Atmosphere : Atmosphere.Oxidation);
        // What the kiln reaches and holds, the fit judges by itself.
        var kiln = new SentKiln(
            Heat: EnumWords.Word(heat), Atmospheres: [atmosphere], MaxCone: cone, Interior: request.Kiln?.Interior);
        return new(kiln, new(EnumWords.Word(row.Kind), cone, atmosphere), request.Load!.Pieces);
    }

    private static bool Own(string field) => field.StartsWith("/pieces", StringComparison.Ordinal);
}
