using System.Globalization;
using System.Text;
using ConeService.Api.Http;
using ConeService.Contract.Quantities;
using ConeService.Contract.Schedules;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Api.Features.Schedules;

/// <summary>
/// A sheet for the kiln room's door: one page to follow and sign, one behind it to understand. What is said on it is said once.
/// </summary>
internal static class FitSheet
{
    private const double LeastProgress = 0.95;
    private const string Blank = "<span class=\"line\"></span>";
    private const string Short = "<span class=\"line short\"></span>";

    /// <summary>Writes the sheet.</summary>
    public static string Render(FittedSchedule result)
    {
        var fit = result.Answer;
        var body = new StringBuilder("<main class=\"sheet\"><div class=\"front\">");
        var title = fit.Schedule.Name + (fit.Cone is null ? "" : ", cone " + fit.Cone);
        body.AppendLine(CultureInfo.InvariantCulture, $"<h1>{E(title)}</h1>");
        body.AppendLine(CultureInfo.InvariantCulture, $"<p>{E(Lead(fit))}</p>");
        Attendance(body, fit);
        Witnesses(body, fit);
        FitSheetTables.Programme(body, fit);
        FitSheetTables.Checks(body, fit);
        Log(body);
        body.Append("<div class=\"flow\">");
        List(body, "Times", [.. Times(fit)]);
        List(body, "Before", [.. Steps(fit, ProcedurePhase.Prepare)]);
        List(body, "While it fires", [.. Steps(fit, ProcedurePhase.Follow)]);
        List(body, "Emergency stop", [.. Steps(fit, ProcedurePhase.Stop)], "stop");
        List(body, "To end the firing",
            [.. fit.ShutDown.Where(NotAtTheFoot).Select(m => m.ToString()).Concat(Steps(fit, ProcedurePhase.Finish))]);
        List(body, "Opening", [.. Opening(fit).Concat(Steps(fit, ProcedurePhase.Open))]);
        // On the door stands what the one who fires must do; why the programme is what it is stands overleaf.
        List(body, "Mind", [.. Vital(fit).Select(c => c.Message.ToString())]);
        List(body, "Cautions", [.. fit.Cautions.Where(Grave).Select(Caution)]);
        body.AppendLine("</div>");
        var decides = fit.WitnessCones is null ? "" : "The witness cones decide. ";
        body.AppendLine(CultureInfo.InvariantCulture,
            $"<p>{decides}Local codes, the kiln's manual and licensed practice come before this sheet.</p></div>");
        Back(body, result);
        body.Append("</main>");
        return HtmlPage.Text(title, body.ToString(), FitSheetStyle.Css);
    }

    private static void Back(StringBuilder body, FittedSchedule result)
    {
        var fit = result.Answer;
        body.AppendLine(CultureInfo.InvariantCulture,
            $"<div class=\"back\"><div class=\"figure\">{FitFigure.Render(result, alone: false)}</div>");
        body.Append("<div class=\"narrow\">");
        List(body, "On the way", [.. fit.Landmarks.Select(l => $"{l.Name}: {FitMoments.Words(fit, l.FromMinutes)}. {l.Advice}")]);
        body.Append("</div><div class=\"flow\">");
        List(body, "The kiln", [.. FitSheetKiln.Lines(fit)]);
        List(body, "To know", [.. fit.Warnings.Where(NotAtTheFoot).Select(m => m.ToString())]);
        List(body, "Further cautions", [.. fit.Cautions.Where(c => !Grave(c)).Select(Caution)]);
        List(body, "Why it is not the template", [.. Told(fit).Except(Vital(fit)).Select(c => c.Message.ToString())]);
        body.Append(CultureInfo.InvariantCulture, $"</div><p>Computed from data package {E(fit.DatasetVersion)}, ");
        body.AppendLine(CultureInfo.InvariantCulture,
            $"chart {E(fit.Chart)}, schedule {E(fit.Schedule.Id)} ({E(FitSettings.Words(fit.Schedule.Confidence))}).</p></div>");
    }

    private static IEnumerable<FitChange> Vital(ScheduleFit fit) => Told(fit)
        .Where(c => c.Code is FitChangeCode.Lost or FitChangeCode.DoneByHand or FitChangeCode.DryingAdded);

    // What is set by hand within a segment stands in its row of the programme.
    private static IEnumerable<FitChange> Told(ScheduleFit fit) => fit.Changes.Where(c => !SetByHand(c.Message));

    private static bool SetByHand(Message message) => message.Code is "schedules.vent-by-hand" or "schedules.atmosphere-by-hand"
        || (message["items"] is Message[] sentences && sentences.All(SetByHand));

    // Who comes first stands once, at the foot of the front page.
    private static bool NotAtTheFoot(Message message) => message.Code is not ("schedules.end-first" or "schedules.warn-witness-cones");

    private static bool Grave(FitCaution caution) => caution.Severity == Severity.Critical;

    private static string Caution(FitCaution caution) => $"{caution.Name}. {caution.Control}";

    private static IEnumerable<string> Steps(ScheduleFit fit, ProcedurePhase phase) =>
        fit.Operation.Procedure.Where(p => p.Phase == phase).Select(p => p.Message.ToString());

    private static string Lead(ScheduleFit fit)
    {
        var parts = new List<string>();
        if (fit.Kiln?.Id is { } kiln) parts.Add($"Kiln {kiln}");
        parts.Add($"peak {QuantityFormat.Temperature((double)fit.PeakCelsius, fit.Units == "F")}");
        parts.Add($"programme {QuantityFormat.Duration(fit.ProgrammeMinutes)}");
        if (fit.Times.Start is { } start)
        {
            var zone = fit.Operation.TimeZone is { } id ? $" ({id})" : "";
            parts.Add($"start {start.ToString("ddd d MMM yyyy HH:mm zzz", CultureInfo.InvariantCulture)}{zone}");
        }

        var text = string.Join(", ", parts);
        return char.ToUpperInvariant(text[0]) + text[1..] + ".";
    }

    // Without a start the hours count from it; who is on call is a person of the studio, whom the one who fires writes in.
    private static void Attendance(StringBuilder body, ScheduleFit fit)
    {
        body.Append("<div class=\"attend\"><h2>Never unattended</h2><ul>");
        foreach (var period in fit.Operation.Attendance)
        {
            var hours = FitMoments.Span(fit, period.FromMinutes, period.ToMinutes);
            body.Append(CultureInfo.InvariantCulture, $"<li><strong>{E(hours)}</strong>: {E(period.Message.ToString())}</li>");
        }

        body.AppendLine(CultureInfo.InvariantCulture,
            $"</ul><p>Local rule, if it asks for more {Blank} At the kiln {Blank} On call, telephone {Blank}</p></div>");
    }

    private static void Witnesses(StringBuilder body, ScheduleFit fit)
    {
        if (fit.WitnessCones is not { } cones) return;
        var where = (fit.WhyNot is not null && fit.HeatWork.TargetProgress < fit.BendDegrees / 90 * LeastProgress, fit.ClockHand) switch
        {
            (true, _) => "not reached by this kiln",
            (_, { } hand and < 6) => FormattableString.Invariant($"ends at {hand:0.#} o’clock: done"),
            _ => "ends down: done",
        };
        var guard = cones.Guard is null ? "none" : FitSettings.GuardStays(fit) ? "stays up" : "falls too, by the model";
        body.Append("<div class=\"cones\">");
        body.Append(CultureInfo.InvariantCulture, $"<div>Guide <strong>{E(cones.Guide ?? "–")}</strong> falls first: watch</div>");
        body.Append(CultureInfo.InvariantCulture, $"<div>Target <strong>{E(cones.Target)}</strong> {where}</div>");
        body.AppendLine(CultureInfo.InvariantCulture, $"<div>Guard <strong>{E(cones.Guard ?? "–")}</strong> {guard}</div></div>");
    }

    private static IEnumerable<string> Times(ScheduleFit fit)
    {
        var (t, o) = (fit.Times, fit.Operation);
        yield return $"Peak: {FitMoments.Words(fit, t.PeakMinutes)}, "
            + $"reckon with {FitMoments.Span(fit, o.PeakSpan.EarliestMinutes, o.PeakSpan.LatestMinutes)}";
        yield return $"Programme ends: {FitMoments.Words(fit, t.EndMinutes)}";
        if (o.LatestShutOffMinutes is { } latest)
            yield return $"Latest shut-off: {FitMoments.Words(fit, latest)}; still climbing or holding the peak then: off by hand";
        if (o.OpeningSpan is { } opening)
            yield return $"Earliest opening: {FitMoments.Span(fit, opening.EarliestMinutes, opening.LatestMinutes)}"
                + (t.Basis == "kiln-model" ? ", by the model" : ", a guess: no kiln was modelled");
    }

    private static IEnumerable<string> Opening(ScheduleFit fit) => fit.Operation.OpeningSpan is null
        ? []
        : ["Not before chamber and ware stay below 95 °C (203 °F), by the pyrometer and not by the clock."];

    private static void Log(StringBuilder body)
    {
        string[] blanks =
        [
            "Loaded by", "Load, kg", "Thickest, mm", "Started by", "Meter at start", "Ended by", "at, time", "Meter at end", "Opened by",
            "at, time", "at, degrees",
        ];
        body.Append("<h2>Load, start, end and opening, to sign</h2><p>");
        foreach (var blank in blanks) body.Append(CultureInfo.InvariantCulture, $"<span class=\"entry\">{blank} {Short}</span> ");
        body.AppendLine("</p>");
    }

    private static void List(StringBuilder body, string title, IReadOnlyCollection<string> items, string style = "")
    {
        if (items.Count == 0) return;
        body.Append(CultureInfo.InvariantCulture, $"<section{(style == "" ? "" : $" class=\"{style}\"")}><h2>{E(title)}</h2><ul>");
        foreach (var item in items) body.Append(CultureInfo.InvariantCulture, $"<li>{E(item)}</li>");
        body.AppendLine("</ul></section>");
    }

    private static string E(string text) => HtmlPage.Encode(text);
}
