using System.Globalization;
using System.Text;
using ConeService.Api.Http;
using ConeService.Contract.Plans;
using ConeService.Data;

namespace ConeService.Api.Features.Plans;

/// <summary>
/// A plan to print: the weeks with kilns across and days down, then a loading list for each firing: layer by layer, tall first, with the
/// cones to set and the sheet of the fitted schedule.
/// </summary>
internal static class PlanSheet
{
    private const string Css = """

        body:has(.plan){max-width:60rem}.plan td,.plan th{border:1px solid var(--line);padding:.2rem .4rem}
        .week td{height:2.2rem}.load{border-top:2px solid var(--ink);margin-top:1.2rem}.load h2{margin:.4rem 0}
        .tick{display:inline-block;width:.9rem;height:.9rem;border:1px solid var(--ink);vertical-align:-.1rem}
        .line{display:inline-block;border-bottom:1px solid var(--ink);min-width:8rem;height:1.2rem}
        @page{size:A4;margin:12mm}
        @media print{.load{break-before:page;border:0}tr{break-inside:avoid}.plan{font-size:10pt}}
        """;

    /// <summary>Writes the sheet.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="request">Its request, for the kilns that are not fired.</param>
    public static string Render(FiringPlan plan, PlanRequest request)
    {
        var body = new StringBuilder("<main class=\"plan\"><h1>Firing plan</h1>");
        var s = plan.Summary;
        body.Append(CultureInfo.InvariantCulture, $"<p>{plan.Firings.Count} firings. Late: {s.Late} pieces. Undone: {s.Undone} pieces.");
        if (s.KilowattHours is { } energy) body.Append(CultureInfo.InvariantCulture, $" Energy about {energy:0} kWh.");
        body.AppendLine("</p>");
        foreach (var warning in plan.Warnings) body.Append(CultureInfo.InvariantCulture, $"<p><strong>{E(warning.Message.ToString())}</strong></p>");
        var kilns = request.Kilns!.Select(k => k!.Kiln!.Id.Text!).ToList();
        Weeks(body, plan, kilns);
        Undone(body, plan);
        foreach (var firing in plan.Firings) Load(body, firing);
        Cautions(body, plan);
        body.Append("</main>");
        return HtmlPage.Text("Firing plan", body.ToString(), Css);
    }

    private static void Weeks(StringBuilder body, FiringPlan plan, List<string> kilns)
    {
        if (plan.Firings.Count == 0) return;
        var first = plan.Firings.Min(f => f.LoadingFrom).Date;
        first = first.AddDays(-(((int)first.DayOfWeek + 6) % 7));
        var last = plan.Firings.Max(f => f.UnloadedAt).Date;
        for (var monday = first; monday <= last; monday = monday.AddDays(7))
        {
            body.Append(CultureInfo.InvariantCulture, $"<div class=\"wide\"><table class=\"week\"><caption>Week of {monday:d MMM yyyy}</caption>");
            body.Append("<thead><tr><th scope=\"col\">Day</th>");
            foreach (var kiln in kilns) body.Append(CultureInfo.InvariantCulture, $"<th scope=\"col\">{E(kiln)}</th>");
            body.Append("</tr></thead><tbody>");
            for (var day = monday; day < monday.AddDays(7); day = day.AddDays(1))
            {
                body.Append(CultureInfo.InvariantCulture, $"<tr><th scope=\"row\">{day:ddd d MMM}</th>");
                foreach (var kiln in kilns)
                {
                    var told = plan.Firings.Where(f => f.KilnId == kiln).SelectMany(f => OnDay(f, day));
                    body.Append(CultureInfo.InvariantCulture, $"<td>{string.Join("<br>", told.Select(E))}</td>");
                }

                body.Append("</tr>");
            }

            body.AppendLine("</tbody></table></div>");
        }
    }

    private static IEnumerable<string> OnDay(PlanFiring f, DateTime day)
    {
        if (f.LoadingFrom.Date == day) yield return $"{PlanWords.Time(f.LoadingFrom)} load {f.Number}";
        if (f.Start.Date == day)
            yield return $"{PlanWords.Time(f.Start)} start {f.Number}: {f.FiringKind}, cone {f.Cone}{(f.IsPinned ? ", stands" : "")}";
        if (f.UnloadedAt.Date == day) yield return $"{PlanWords.Time(f.UnloadedAt)} {f.Number} unloaded";
        else if (f.Start.Date < day && day < f.UnloadedAt.Date) yield return $"{f.Number} fires or cools";
    }

    private static void Undone(StringBuilder body, FiringPlan plan)
    {
        if (plan.Unplanned.Count == 0) return;
        body.Append("<h2>Left undone</h2><ul>");
        foreach (var left in plan.Unplanned)
        {
            var why = left.LoadReasons.Count > 0 ? left.LoadReasons[0].Message.ToString() : EnumWords.Word(left.Reason).Replace('-', ' ');
            body.Append(CultureInfo.InvariantCulture, $"<li>{left.Count} × {E(left.Id)}, firing {left.Stage} of theirs: {E(why)}</li>");
        }

        body.AppendLine("</ul>");
    }

    private static void Load(StringBuilder body, PlanFiring firing)
    {
        body.Append(CultureInfo.InvariantCulture, $"<section class=\"load\"><h2>Firing {E(PlanWords.Name(firing))}</h2><p>");
        body.Append(CultureInfo.InvariantCulture, $"Load from {PlanWords.Moment(firing.LoadingFrom)}, start {PlanWords.Moment(firing.Start)}, ");
        body.Append(CultureInfo.InvariantCulture, $"can be opened from {PlanWords.Moment(firing.OpeningFrom)}, unloaded by ");
        body.Append(CultureInfo.InvariantCulture, $"{PlanWords.Moment(firing.UnloadedAt)}. {E(PlanWords.Summary(firing))}</p>");
        body.Append(CultureInfo.InvariantCulture, $"<p>Cones to set, coolest first: <strong>{E(string.Join(", ", firing.WitnessCones))}</strong>; ");
        body.Append(CultureInfo.InvariantCulture, $"{E(firing.Cone)} is the target.");
        if (firing.FittedSchedule is { } sheet)
            body.Append(CultureInfo.InvariantCulture, $" <a href=\"{HtmlPage.Encode(sheet)}\">Sheet of the fitted schedule</a>.");
        body.Append("</p><table><thead><tr><th scope=\"col\">Layer</th><th scope=\"col\" class=\"n\">Height, mm</th>");
        body.Append("<th scope=\"col\">Pieces, tall first</th><th scope=\"col\" class=\"n\">Shelf taken</th></tr></thead><tbody>");
        foreach (var layer in firing.Layers)
        {
            var pieces = layer.Pieces.Select(p => $"<span class=\"tick\"></span> {E(PlanWords.Pieces(p))}");
            body.Append(CultureInfo.InvariantCulture,
                $"<tr><th scope=\"row\">{layer.Number}</th><td class=\"n\">{layer.HeightMillimetres:0}</td><td>{string.Join("<br>", pieces)}</td>"
                + $"<td class=\"n\">{layer.SharePercent:0} %</td></tr>");
        }

        body.AppendLine("</tbody></table><p>Loaded by <span class=\"line\"></span> Unloaded by <span class=\"line\"></span></p></section>");
    }

    private static void Cautions(StringBuilder body, FiringPlan plan)
    {
        body.Append("<section class=\"load\"><h2>Cautions</h2><ul>");
        foreach (var caution in plan.Cautions)
            body.Append(CultureInfo.InvariantCulture, $"<li><strong>{E(caution.Hazard)}</strong>: {E(caution.When)} {E(caution.Control)}</li>");
        body.Append("</ul><p>The plan reckons room in layers and knows neither how evenly a kiln fires nor what breaks. ");
        body.AppendLine("Local codes, the kiln's manual and licensed practice come before this sheet.</p></section>");
    }

    private static string E(string text) => HtmlPage.Encode(text);
}
