using System.Globalization;
using System.Text;
using ConeService.Api.Http;
using ConeService.Contract.Plans;
using ConeService.Data;

namespace ConeService.Api.Features.Plans;

/// <summary>
/// A plan to print: the weeks with kilns across and days down, then a loading list for each firing, each on a page of its own.
/// </summary>
internal static class PlanSheet
{
    // More kilns than these side by side would be cut off by the edge of the paper.
    private const int KilnsAcross = 5;

    private const string Css = """

        body:has(.plan){max-width:60rem}.plan td,.plan th{border:1px solid var(--line);padding:.25rem .45rem}
        .plan{overflow-wrap:break-word}.plan caption{padding:.7rem 0 .3rem}.plan thead th{text-align:left;font-weight:600}
        .plan thead th.n{text-align:right}
        .week{table-layout:fixed}.week td{height:2.1rem}.week thead th:first-child{width:6.2rem}.week ul{margin:0;padding:0;list-style:none}
        .week b{font-size:1.05em}.load{border-top:2px solid var(--ink);margin-top:1.6rem}.load h2{margin:.5rem 0 .3rem}
        .facts{display:grid;grid-template-columns:repeat(auto-fit,minmax(11rem,1fr));gap:.4rem;margin:.5rem 0;padding:0}
        .facts div{border:1px solid var(--line);padding:.2rem .5rem}.facts dt{font-size:.8rem}.facts dd{margin:0;font-weight:600}
        .cones{font-size:1.3rem;letter-spacing:.02em}.goal{text-decoration:underline;text-underline-offset:.2em}
        .standing{margin:0;padding:0;list-style:none}.standing li{margin:.15rem 0}.standing small{display:block;padding-left:1.4rem}
        .tick{display:inline-block;width:.9rem;height:.9rem;border:1px solid var(--ink);vertical-align:-.1rem;margin-right:.25rem}
        .line{display:inline-block;border-bottom:1px solid var(--ink);min-width:8rem;height:1.3rem;margin-right:1rem}
        .address{overflow-wrap:anywhere}
        @page{size:A4;margin:12mm}
        @media print{.load,.undone{break-before:page;border:0;margin-top:0}tr,.facts div,.week{break-inside:avoid}.plan{font-size:10pt}
        .week td{height:6mm}.plan td,.plan th{padding:.8mm 1.5mm}.wide{overflow:visible}.facts{grid-template-columns:repeat(3,1fr)}}
        @media screen and (max-width:40rem){
        .week,.week caption,.week tbody,.week tr,.week td,.week tbody th{display:block;width:auto}
        .week thead{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}
        .week tr{border:1px solid var(--line);margin:.3rem 0;padding:.2rem .4rem}.week tr:not(:has(li)){display:none}
        .week td,.week tbody th{border:0;height:auto;padding:.1rem 0}.week tbody th{font-weight:600}
        .week td:empty{display:none}.week td::before{content:attr(data-h);font-weight:600}
        .shelves,.shelves tbody,.shelves tr,.shelves td,.shelves tbody th{display:block;width:auto}
        .shelves thead{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}
        .shelves tr{border:1px solid var(--line);margin:.3rem 0;padding:.2rem .4rem}.shelves td,.shelves tbody th{border:0;padding:.1rem 0}
        .shelves td.n{text-align:left}.shelves tbody th{font-weight:600}
        .shelves [data-h]::before{content:attr(data-h) ": ";font-weight:600}}
        """;

    /// <summary>Writes the sheet.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="request">Its request, for the kilns that are not fired and for what the pieces are.</param>
    public static string Render(FiringPlan plan, PlanRequest request)
    {
        var body = new StringBuilder("<main class=\"plan\"><h1>Firing plan</h1>");
        var s = plan.Summary;
        body.Append(CultureInfo.InvariantCulture, $"<p>{plan.Firings.Count} firings. Late: {s.Late} pieces. Undone: {s.Undone} pieces.");
        if (s.KilowattHours is { } energy) body.Append(CultureInfo.InvariantCulture, $" Energy about {energy:0} kWh.");
        if (request.TimeZone is { } zone) body.Append(CultureInfo.InvariantCulture, $" Times by the clock of {E(zone)}.");
        body.AppendLine("</p>");
        foreach (var warning in plan.Warnings) body.Append(CultureInfo.InvariantCulture,
            $"<p><strong>{E(warning.Message.ToString())}</strong></p>");
        var kilns = request.Kilns!.Select(k => k!.Kiln!.Id.Text!).ToList();
        if (plan.Firings.Count > 0)
        {
            foreach (var across in kilns.Chunk(KilnsAcross)) Weeks(body, plan, across);
        }

        Undone(body, plan);
        var list = new PlanLoadingList(plan, request);
        foreach (var firing in plan.Firings) list.Write(body, firing);
        Cautions(body, plan);
        body.Append("</main>");
        return HtmlPage.Text("Firing plan", body.ToString(), Css);
    }

    private static void Weeks(StringBuilder body, FiringPlan plan, string[] kilns)
    {
        var first = plan.Firings.Min(f => f.LoadingFrom).Date;
        first = first.AddDays(-(((int)first.DayOfWeek + 6) % 7));
        var last = plan.Firings.Max(f => f.UnloadedAt).Date;
        for (var monday = first; monday <= last; monday = monday.AddDays(7))
        {
            body.Append(CultureInfo.InvariantCulture, $"<table class=\"week\"><caption>Week of {monday:d MMM yyyy}</caption>");
            body.Append("<thead><tr><th scope=\"col\">Day</th>");
            foreach (var kiln in kilns) body.Append(CultureInfo.InvariantCulture, $"<th scope=\"col\">{E(kiln)}</th>");
            body.Append("</tr></thead><tbody>");
            for (var day = monday; day < monday.AddDays(7); day = day.AddDays(1))
            {
                body.Append(CultureInfo.InvariantCulture, $"<tr><th scope=\"row\">{day:ddd d MMM}</th>");
                foreach (var kiln in kilns)
                {
                    var told = plan.Firings.Where(f => f.KilnId == kiln).SelectMany(f => OnDay(f, day)).ToList();
                    body.Append(CultureInfo.InvariantCulture, $"<td data-h=\"{E(kiln)}\">");
                    if (told.Count > 0) body.Append("<ul>").Append(string.Concat(told.Select(t => $"<li>{t}</li>"))).Append("</ul>");
                    body.Append("</td>");
                }

                body.Append("</tr>");
            }

            body.AppendLine("</tbody></table>");
        }
    }

    // By the clock: what is begun on a day stands before what comes out later that day.
    private static IEnumerable<string> OnDay(PlanFiring f, DateTime day)
    {
        var number = string.Create(CultureInfo.InvariantCulture, $"<b>{f.Number}</b>");
        var stands = f.IsPinned ? ", stands" : "";
        var told = new List<(DateTimeOffset? At, string What)>
        {
            (f.LoadingFrom, $"load {number}"),
            (f.Start, $"start {number}: {E(f.FiringKind)}, cone\u00a0{E(f.Cone)}{stands}"),
            (f.Peak, $"peak of {number}, about"),
            (f.ProgrammeEnds, $"end of {number}, about"),
        };
        told.AddRange(f.Attendance.SelectMany(a => a.NobodyThere.Select(n => ((DateTimeOffset?)n.From,
            $"<strong>{(a.LiveFlame ? "live flame, " : "")}nobody there for {number}</strong> to {To(n)}"))));
        foreach (var (at, what) in told.Where(t => t.At?.Date == day).OrderBy(t => t.At))
            yield return $"{PlanWords.Time(at!.Value)} {what}";
        if (f.UnloadedAt.Date == day) yield return $"unload {number}, done by {PlanWords.Time(f.UnloadedAt)}";
        else if (f.Start.Date < day && day < f.UnloadedAt.Date) yield return $"{number} fires or cools";
    }

    private static string To(PlanTime time) => time.To.Date == time.From.Date
        ? PlanWords.Time(time.To)
        : PlanWords.Moment(time.To);

    private static void Undone(StringBuilder body, FiringPlan plan)
    {
        if (plan.Unplanned.Count == 0) return;
        body.Append("<section class=\"undone\"><h2>Left undone</h2><ul>");
        foreach (var left in plan.Unplanned)
        {
            var why = left.Needs is { } needs
                ? string.Join(' ', left.LoadReasons.Select(r => r.Message.ToString()).Take(1).Prepend(needs.ToString()))
                : left.LoadReasons.Count > 0 ? left.LoadReasons[0].Message.ToString() : EnumWords.Word(left.Reason).Replace('-', ' ');
            body.Append(CultureInfo.InvariantCulture, $"<li>{left.Count} × {E(left.Id)}, firing {left.Stage} of theirs: {E(why)}</li>");
        }

        body.AppendLine("</ul></section>");
    }

    private static void Cautions(StringBuilder body, FiringPlan plan)
    {
        body.Append("<section class=\"load\"><h2>Cautions</h2><ul>");
        foreach (var caution in plan.Cautions)
            body.Append(CultureInfo.InvariantCulture,
                $"<li><strong>{E(caution.Hazard)}</strong>: {E(caution.When)} {E(caution.Control)}</li>");
        body.Append("</ul><p>The plan reckons room in layers and knows neither how evenly a kiln fires nor what breaks. ");
        body.AppendLine("Local codes, the kiln's manual and licensed practice come before this sheet.</p></section>");
    }

    private static string E(string text) => HtmlPage.Encode(text);
}
