using System.Globalization;
using System.Text;
using ConeService.Api.Http;
using ConeService.Contract.Plans;

namespace ConeService.Api.Features.Plans;

/// <summary>
/// The loading list of a firing: when, the cones to set, then shelf by shelf, tall first, what stands there and how high the shelf above
/// goes; last, the sheet of the fitted schedule.
/// </summary>
internal sealed class PlanLoadingList(FiringPlan plan, PlanRequest request)
{
    private readonly Dictionary<string, PlanPiece> pieces =
        request.Pieces!.ToDictionary(p => p!.Piece!.Id.Text!, p => p!, StringComparer.Ordinal);

    private readonly Dictionary<string, PieceOutcome> outcomes = plan.Pieces.ToDictionary(p => p.Id, StringComparer.Ordinal);

    /// <summary>Writes it.</summary>
    public void Write(StringBuilder body, PlanFiring firing)
    {
        body.Append(CultureInfo.InvariantCulture,
            $"<section class=\"load\"><h2>Firing {E(PlanWords.Name(firing))}</h2><dl class=\"facts\">");
        Fact(body, "Load from", PlanWords.Moment(firing.LoadingFrom));
        Fact(body, "Start", PlanWords.Moment(firing.Start));
        if (firing.Peak is { } peak) Fact(body, "Peak, about", PlanWords.Moment(peak));
        if (firing.ProgrammeEnds is { } ends) Fact(body, "Programme ends, about", PlanWords.Moment(ends));
        Fact(body, "Can be opened from", PlanWords.Moment(firing.OpeningFrom));
        Fact(body, "Unloaded by", PlanWords.Moment(firing.UnloadedAt));
        Fact(body, "Holds", PlanWords.Summary(firing));
        if (firing.ThickestMillimetres is { } wall)
            Fact(body, "Thickest wall told of", string.Create(CultureInfo.InvariantCulture, $"{wall:0.#} mm"));
        Fact(body, "Fired", Why(firing));
        body.Append("</dl><p>Cones to set, coolest first: <strong class=\"cones\">");
        body.AppendJoin(" · ", firing.WitnessCones.Select(c => c == firing.Cone ? $"<span class=\"goal\">{E(c)}</span>" : E(c)));
        body.Append(CultureInfo.InvariantCulture, $"</strong> Cone {E(firing.Cone)} is to bend; put them where they are seen.</p>");
        Attendance(body, firing);
        Shelves(body, firing);
        Schedule(body, firing);
        body.Append("<p>Loaded by <span class=\"line\"></span> Started by <span class=\"line\"></span> ");
        body.AppendLine("Unloaded by <span class=\"line\"></span></p></section>");
    }

    private static void Attendance(StringBuilder body, PlanFiring firing)
    {
        if (firing.Attendance.Count == 0) return;
        body.Append("<p>Somebody at the kiln:</p><ul class=\"attend\">");
        foreach (var time in firing.Attendance)
        {
            body.Append(CultureInfo.InvariantCulture, $"<li><b>{E(PlanWords.Span(time.From, time.To))}</b>: {E(time.Message.ToString())}");
            if (PlanWords.NobodyThere(time) is { Length: > 0 } alone)
                body.Append(CultureInfo.InvariantCulture, $"<strong>{E(alone)}</strong>");
            body.Append("</li>");
        }

        body.Append("</ul><p class=\"small\">Never left to a shut-off alone. ");
        body.Append("The rules of the house and of the fire service come first.</p>");
    }

    private void Shelves(StringBuilder body, PlanFiring firing)
    {
        body.Append("<table class=\"shelves\"><thead><tr><th scope=\"col\">Shelf</th><th scope=\"col\" class=\"n\">Free height, mm</th>");
        body.Append("<th scope=\"col\">What stands on it, tall first</th><th scope=\"col\" class=\"n\">Taken</th></tr></thead><tbody>");
        var said = new HashSet<LoadingNote>(ReferenceEqualityComparer.Instance);
        foreach (var layer in firing.Layers)
        {
            body.Append(CultureInfo.InvariantCulture, $"<tr><th scope=\"row\" data-h=\"Shelf\">{layer.Number}</th>");
            body.Append(CultureInfo.InvariantCulture, $"<td class=\"n\" data-h=\"Free height, mm\">{layer.HeightMillimetres:0}</td>");
            body.Append("<td><ul class=\"standing\">");
            foreach (var group in layer.Pieces)
            {
                body.Append(CultureInfo.InvariantCulture,
                    $"<li><span class=\"tick\"></span> <strong>{E(PlanWords.Pieces(group))}</strong>");
                if (About(group, firing) is { Length: > 0 } about) body.Append(CultureInfo.InvariantCulture, $"<small>{E(about)}</small>");
                foreach (var note in firing.LoadingNotes.Where(n => n.Pieces.Contains(group.Id))) Note(body, firing, note, said.Add(note));
                body.Append("</li>");
            }

            body.Append(CultureInfo.InvariantCulture, $"</ul></td><td class=\"n\" data-h=\"Taken\">{layer.SharePercent:0} %</td></tr>");
        }

        body.Append("</tbody></table>");
        foreach (var note in firing.LoadingNotes.Where(n => n.Pieces.Count == 0))
            body.Append(CultureInfo.InvariantCulture, $"<p>For the whole load: {E(note.Reason.Texts.Student.ToString())}</p>");
        body.Append("<p class=\"small\">Free height is from the shelf to the one above, clearance included: posts at least ");
        body.Append("as high. Which shelf lies lowest is yours to choose: the list goes from the tallest ware to the lowest. Taken is of ");
        body.Append("what ");
        body.AppendLine("such a shelf holds in practice; a few per cent above 100 are pieces that did not come out even.</p>");
    }

    // In the words of the load check where it comes first; then by its number.
    private static void Note(StringBuilder body, PlanFiring firing, LoadingNote note, bool first)
    {
        var number = firing.LoadingNotes.ToList().IndexOf(note) + 1;
        if (first) body.Append(CultureInfo.InvariantCulture,
            $"<small><b>Note {number}:</b> {E(note.Reason.Texts.Student.ToString())}</small>");
        else body.Append(CultureInfo.InvariantCulture, $"<small>See note {number}.</small>");
    }

    // What tells it from others on the rack: how large it is, its clay, the coats of this firing.
    private string About(LayerPieces group, PlanFiring firing)
    {
        var sent = pieces[group.Id];
        var about = new List<string>();
        if (sent.Piece!.Size is { } size)
        {
            about.Add(size.DepthMillimetres.IsAbsent
                ? $"{size.HeightMillimetres.Text} mm high, {size.WidthMillimetres.Text} mm across"
                : $"{size.HeightMillimetres.Text} mm high, {size.WidthMillimetres.Text} by {size.DepthMillimetres.Text} mm");
        }

        if ((sent.Piece.Body.Text ?? sent.Piece.OwnBody?.Name.Text) is { } clay) about.Add(clay);
        var coats = group.Stage == 1 ? sent.Piece.Coats : sent.Then![group.Stage - 2]?.Coats;
        var names = (coats ?? []).Select(c => c?.Glaze.Text ?? c?.OwnGlaze?.Name.Text).OfType<string>().ToList();
        about.Add(names.Count > 0 ? string.Join(" over ", Enumerable.Reverse(names)) : "no coat");
        if (firing.FiringKind == "bisque" && sent.BisqueStack is { } stack) about.Add($"up to {stack.Count.Text} in or on each other");
        var outcome = outcomes[group.Id];
        var next = outcome.Firings.Where(f => f.Stage == group.Stage + 1).Select(f => f.Firing).Distinct().Order().ToList();
        if (next.Count > 0) about.Add($"next in firing {string.Join(", ", next.Select(n => n.ToString(CultureInfo.InvariantCulture)))}");
        return string.Join("; ", about);
    }

    private static void Schedule(StringBuilder body, PlanFiring firing)
    {
        if (firing.Schedule is null)
        {
            body.AppendLine("<p>No schedule was needed for this plan: fire by your own.</p>");
            return;
        }

        body.Append(CultureInfo.InvariantCulture, $"<p>Schedule: <strong>{E(firing.Schedule)}</strong>");
        if (firing.FittedSchedule is { } sheet)
        {
            // On paper the address is what is left of a link.
            body.Append(CultureInfo.InvariantCulture,
                $", fitted to this kiln, cone and start: <a href=\"{HtmlPage.Encode(sheet)}\">its sheet</a>");
            body.Append(CultureInfo.InvariantCulture,
                $", to print and put behind this list. <small class=\"address\">{HtmlPage.Encode(sheet)}</small>");
        }

        body.AppendLine("</p>");
    }

    private static string Why(PlanFiring firing) => firing.Why switch
    {
        FiringReason.Pinned => "since it stood",
        FiringReason.Announced => "as it was announced",
        FiringReason.Date => "for a date of its pieces",
        _ => "since it is full enough",
    };

    private static void Fact(StringBuilder body, string name, string value) =>
        body.Append(CultureInfo.InvariantCulture, $"<div><dt>{name}</dt><dd>{E(value)}</dd></div>");

    private static string E(string text) => HtmlPage.Encode(text);
}
