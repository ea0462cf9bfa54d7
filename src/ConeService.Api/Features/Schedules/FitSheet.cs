using System.Globalization;
using System.Text;
using ConeService.Api.Http;
using ConeService.Contract.Kilns;
using ConeService.Contract.Quantities;
using ConeService.Contract.Schedules;
using ConeService.Data;

namespace ConeService.Api.Features.Schedules;

/// <summary>
/// A sheet for the kiln room's door: the programme to sign, the witness cones to set, times, cautions, and the curve on a second page.
/// </summary>
internal static class FitSheet
{
    private const string Style = """

        .sheet{font-size:.82rem;line-height:1.32}.sheet h1{margin:.1rem 0;font-size:1.5rem}
        .sheet h2{font-size:1rem;margin:.5rem 0 .15rem}.sheet p{margin:.4rem 0}
        .sheet td,.sheet th{border:1px solid var(--line);padding:.16rem .35rem}.sheet thead th{text-align:left}
        .sheet td{height:1.9rem}.sheet td,.sheet tbody th{vertical-align:middle}.sheet td.n,.sheet th{white-space:nowrap}
        .sheet td.sign{min-width:3.8rem}.sheet .small,.sheet .many{font-size:.88em}
        .cones{display:flex;gap:.6rem;margin:.4rem 1px}.cones div{flex:1;border:2px solid var(--ink);text-align:center;padding:.15rem}
        .cones strong{display:block;font-size:1.5rem}.two{display:grid;grid-template-columns:1fr 1fr;gap:0 1.2rem}
        .many ul{columns:2;column-gap:1.2rem}.sheet ul{margin:.1rem 0;padding-left:1.1rem}
        .line{display:inline-block;border-bottom:1px solid var(--ink);min-width:9rem;height:1.6rem}
        .figure svg{width:100%;height:auto}
        @page{size:A4;margin:12mm}
        @media print{.figure{break-before:page}.figure svg{max-height:212mm}tr,li,.cones{break-inside:avoid}
        .sheet{font-size:8.6pt;line-height:1.25}}
        @media (max-width:40rem){.two{grid-template-columns:1fr}.many ul{columns:1}}
        """;

    private const double LeastProgress = 0.95;

    /// <summary>Writes the sheet.</summary>
    public static string Render(FittedSchedule result)
    {
        var fit = result.Answer;
        var body = new StringBuilder("<div class=\"sheet\">");
        var title = fit.Schedule.Name + (fit.Cone is null ? "" : ", cone " + fit.Cone);
        body.AppendLine(CultureInfo.InvariantCulture, $"<h1>{E(title)}</h1>");
        body.AppendLine(CultureInfo.InvariantCulture, $"<p>{E(Lead(fit))}</p>");
        Witnesses(body, fit);
        Table(body, fit);
        body.Append("<div class=\"two\"><div>");
        Times(body, fit);
        List(body, "To end the firing", [.. fit.ShutDown.Select(m => m.ToString())]);
        body.Append("</div><div>");
        Kiln(body, fit);
        body.AppendLine("</div></div>");
        // On the door stands what the one who fires must do; why the programme is what it is stands overleaf.
        var vital = fit.Changes.Where(c => c.Code is FitChangeCode.Lost or FitChangeCode.DoneByHand or FitChangeCode.DryingAdded).ToList();
        List(body, "Mind", [.. vital.Select(c => c.Message).Concat(fit.Warnings).Select(m => m.ToString())]);
        body.Append("<div class=\"many\">");
        List(body, "Cautions", [.. fit.Cautions.Select(c => $"{c.Name}. {c.Control}")]);
        body.Append("</div>");
        const string line = "<span class=\"line\"></span>";
        body.AppendLine(CultureInfo.InvariantCulture, $"<p>Loaded by {line} Started by {line} Opened by {line}</p>");
        body.Append(CultureInfo.InvariantCulture, $"<p class=\"small\">Computed from data package {E(fit.DatasetVersion)}, ");
        body.Append(CultureInfo.InvariantCulture,
            $"chart {E(fit.Chart)}, schedule {E(fit.Schedule.Id)} ({E(Words(fit.Schedule.Confidence))}). ");
        body.AppendLine("The witness cones decide. Local codes, the kiln's manual and licensed practice come first.</p></div>");
        body.AppendLine(CultureInfo.InvariantCulture, $"<div class=\"figure\">{FitFigure.Render(result)}</div>");
        body.Append("<div class=\"sheet\"><div class=\"small\">");
        List(body, "Why it is not the template", [.. fit.Changes.Except(vital).Select(c => c.Message.ToString())]);
        body.AppendLine("</div></div>");
        return HtmlPage.Text(title, body.ToString(), Style);
    }

    private static string Lead(ScheduleFit fit)
    {
        var parts = new List<string>();
        if (fit.Kiln?.Id is { } kiln) parts.Add($"Kiln {kiln}");
        parts.Add($"peak {QuantityFormat.Temperature((double)fit.PeakCelsius, fit.Units == "F")}");
        parts.Add($"programme {QuantityFormat.Duration(fit.ProgrammeMinutes)}");
        if (fit.Times.Start is { } start) parts.Add($"start {start.ToString("ddd d MMM yyyy HH:mm zzz", CultureInfo.InvariantCulture)}");
        var text = string.Join(", ", parts);
        return char.ToUpperInvariant(text[0]) + text[1..] + ".";
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
        body.Append("<div class=\"cones\">");
        body.Append(CultureInfo.InvariantCulture, $"<div>Guide<strong>{E(cones.Guide ?? "–")}</strong>falls first: watch</div>");
        body.Append(CultureInfo.InvariantCulture, $"<div>Target<strong>{E(cones.Target)}</strong>{where}</div>");
        body.AppendLine(CultureInfo.InvariantCulture, $"<div>Guard<strong>{E(cones.Guard ?? "–")}</strong>{Guard(fit)}</div></div>");
    }

    // A guard that the model sees falling is not told to stay up.
    private static string Guard(ScheduleFit fit) =>
        fit.HeatWork.Cones.Any(c => c.Cone == fit.WitnessCones?.Guard && c.DownAtMinutes is not null)
            ? "falls too, by the model"
            : "stays up";

    private static void Table(StringBuilder body, ScheduleFit fit)
    {
        var (f, timed) = (fit.Units == "F", fit.Times.Start is not null);
        var unit = f ? "°F" : "°C";
        body.Append("<table><caption>The programme, to sign segment by segment</caption><thead><tr><th scope=\"col\">No.</th>");
        foreach (var head in (string[])[$"{unit}/h", $"To {unit}", "Hold", timed ? "About" : "Hours"])
            body.Append(CultureInfo.InvariantCulture, $"<th scope=\"col\" class=\"n\">{head}</th>");
        foreach (var head in (string[])["For", "Vent, atmosphere", "Read, time", "By"])
            body.Append(CultureInfo.InvariantCulture, $"<th scope=\"col\">{head}</th>");
        body.AppendLine("</tr></thead><tbody>");
        foreach (var s in fit.Segments)
        {
            var outcome = fit.Kiln?.Segments[s.Number - 1];
            var from = outcome?.StartMinutes ?? s.StartMinutes;
            var rate = f ? s.RateFahrenheitPerHour : s.RateCelsiusPerHour;
            body.Append(CultureInfo.InvariantCulture, $"<tr><th scope=\"row\">{s.Number}</th>");
            string[] numbers =
            [
                rate is { } r ? r.ToString("0", CultureInfo.InvariantCulture) : s.HoldStartMinutes > s.StartMinutes ? "full" : "–",
                (f ? s.TargetFahrenheit : s.TargetCelsius).ToString("0", CultureInfo.InvariantCulture),
                s.HoldMinutes > 0 ? QuantityFormat.Duration(s.HoldMinutes) : "–",
                fit.Times.Start is { } start
                    ? start.AddMinutes(from).ToString("ddd HH:mm", CultureInfo.InvariantCulture)
                    : (from / 60).ToString("0.0", CultureInfo.InvariantCulture),
            ];
            foreach (var number in numbers) body.Append(CultureInfo.InvariantCulture, $"<td class=\"n\">{number}</td>");
            body.Append(CultureInfo.InvariantCulture, $"<td>{E(s.Purpose.ToString())}</td><td>{E(FitSettings.Words(s, f))}</td>");
            body.AppendLine("<td class=\"sign\"></td><td class=\"sign\"></td></tr>");
        }

        body.AppendLine("</tbody></table>");
    }

    private static void Times(StringBuilder body, ScheduleFit fit)
    {
        var t = fit.Times;
        List<string> lines = [Line("Peak", t.PeakMinutes, t.Peak), Line("Programme ends", t.EndMinutes, t.End)];
        if (t.OpeningMinutes is { } opening)
            lines.Add(Line("Earliest opening", opening, t.Opening) + ". Below 95 °C (203 °F) by the pyrometer");
        List(body, "Times", lines);
    }

    private static void Kiln(StringBuilder body, ScheduleFit fit)
    {
        if (fit.Kiln is not { } kiln) return;
        var energy = kiln.Fuel is { } fuel
            ? Fuel(fuel)
            : FormattableString.Invariant($"Energy about {kiln.Energy.TotalKilowattHours:0} kWh, ± 20 %");
        var follows = kiln.CanFollow ? "; it keeps up with every climb" : "";
        List<string> lines = [FormattableString.Invariant($"{kiln.AvailableKilowatts:0.0} kW there{follows}"), energy];
        if (kiln.Cost is { } cost)
        {
            lines.Add(cost.Amount is { } amount
                ? FormattableString.Invariant($"Cost about {amount:0.00} {cost.Currency} ({cost.Low:0.00} to {cost.High:0.00})")
                : FormattableString.Invariant($"Cost {cost.Low:0.00} to {cost.High:0.00} {cost.Currency}"));
        }

        if (kiln.Instead is { } instead) lines.Add(instead.ToString());
        lines.AddRange(kiln.Remedies.Select(r => r.Message.ToString()));
        List(body, "Kiln", lines);
    }

    private static string Fuel(KilnFuel fuel)
    {
        if (fuel.KilowattHours is { } own) return FormattableString.Invariant($"Fuel about {own:0} kWh");
        var (low, high) = (fuel.UsualLowKilowattHours, fuel.UsualHighKilowattHours);
        return FormattableString.Invariant($"Fuel at least {fuel.LowerBoundKilowattHours:0} kWh, usually {low:0} to {high:0}");
    }

    private static void List(StringBuilder body, string title, IReadOnlyCollection<string> items)
    {
        if (items.Count == 0) return;
        body.Append(CultureInfo.InvariantCulture, $"<h2>{E(title)}</h2><ul>");
        foreach (var item in items) body.Append(CultureInfo.InvariantCulture, $"<li>{E(item)}</li>");
        body.AppendLine("</ul>");
    }

    private static string Line(string what, double minutes, DateTimeOffset? at) => $"{what}: {When(minutes, at)}";

    private static string When(double minutes, DateTimeOffset? at) =>
        at is { } moment
            ? $"about {Moment(moment)} ({QuantityFormat.Duration(minutes)})"
            : $"after {QuantityFormat.Duration(minutes)}";

    private static string Moment(DateTimeOffset time) => time.ToString("ddd d MMM HH:mm", CultureInfo.InvariantCulture);

    private static string Words<T>(T value)
        where T : struct, Enum => EnumWords.Word(value).Replace('-', ' ');

    private static string E(string text) => HtmlPage.Encode(text);
}
