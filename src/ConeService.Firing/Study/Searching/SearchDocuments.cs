using ConeService.Contract.Answers;
using ConeService.Data;

namespace ConeService.Firing.Study.Searching;

/// <summary>Everything of a data package that can be found by words.</summary>
internal static class SearchDocuments
{
    /// <summary>The things, list by list.</summary>
    public static IEnumerable<SearchDocument> Of(Dataset data) =>
    [
        .. Words(data), .. Practice(data), .. Materials(data), .. Colours(data), .. Firings(data),
    ];

    private static IEnumerable<SearchDocument> Words(Dataset data)
    {
        var causes = data.FaultCauses.ToLookup(c => c.Fault, StringComparer.Ordinal);
        foreach (var f in data.Faults)
        {
            yield return Made("faults", 1.3, f.Id, f.Fault, f.Tell, f.Synonyms,
                [.. causes[f.Id].SelectMany(c => (string[])[c.Cause, c.Tell, c.Change]),
                 .. data.GasReleases.Where(g => g.Faults.Contains(f.Id)).Select(g => $"{g.Substance} {string.Join(' ', g.Gases)}")]);
        }

        foreach (var t in data.Terms) yield return Made("glossary", 1.25, t.Id, t.Term, t.Meaning, t.Synonyms);
        foreach (var l in data.Landmarks)
            yield return Made("landmarks", 1.1, l.Id, l.Landmark, l.Effect ?? l.Advice, [], l.Effect, l.Advice, Band(l));
        foreach (var f in data.ConeFacts)
        {
            yield return new(
                new(f.Id, f.Statement, "cone-facts", f.ValuePrinted is null ? null : $"{f.ValuePrinted} {f.Unit}".Trim(),
                    new Address($"/v1/cone-facts?topic={f.Topic}")),
                0.9, [f.Topic.Replace('-', ' ')], [f.Note]);
        }
    }

    private static string Band(LandmarkRow l) => string.Create(System.Globalization.CultureInfo.InvariantCulture,
        $"{l.CelsiusLow:0} {l.CelsiusHigh:0}");

    private static IEnumerable<SearchDocument> Practice(Dataset data) =>
    [
        .. data.Processes.Select(p => Made(
            "processes", 1.2, p.Id, p.Process, p.Effect, [], p.Effect, p.Use, p.PeopleNearby, p.AtmosphereNote, p.FoodContactNote,
            p.CareNote, p.WatertightNote, p.FoodContact == ProcessFoodContact.NotForFood ? "not for food eat drink" : "food eat drink",
            string.Join(' ', data.ProcessAdditions.Where(a => a.Process == p.Id).Select(a => $"{a.Material} {a.When}")))),
        .. data.Cautions.Select(c => Made(
            "cautions", 1.15, c.Id, c.Hazard, c.Control, [], c.When, c.Control, string.Join(' ', c.AppliesTo), "danger hazard caution",
            // A term that leads to a caution is another word for what it warns of.
            string.Join(' ', data.Terms.Where(t => t.Href == "/v1/cautions/" + c.Id).SelectMany(t => t.Synonyms.Prepend(t.Term))))),
        .. data.LoadRules.Select(r => new SearchDocument(
            new(r.Id, r.Rule, "load-rules", r.Rationale, new Address("/v1/load-rules/" + r.Id)), 0.7, [], [r.Topic, r.Note])),
    ];

    private static IEnumerable<SearchDocument> Materials(Dataset data) =>
    [
        .. data.ClayBodies.Select(b => Made(
            "clay-bodies", 1.1, b.Id, b.Name, b.Description ?? b.UseNote, ["clay " + b.Name], b.UseNote, b.Underfired, b.Overfired,
            b.ExpansionNote)),
        .. data.Glazes.Select(g => Made(
            "glazes", 1.1, g.Id, g.Name, g.AtmosphereNote, ["glaze " + g.Name], g.AtmosphereNote, g.WrongAtmosphereEffect)),
        .. data.Colorants.Select(c => Made("colorants", 1.1, c.Id, c.Name, c.HazardNote, c.Aliases, c.Formula)),
    ];

    // What a colorant gives in an atmosphere is asked as such, and answered by the colours told of it.
    private static IEnumerable<SearchDocument> Colours(Dataset data) =>
        from colorant in data.Colorants
        from atmosphere in (Atmosphere[])[Atmosphere.Oxidation, Atmosphere.Reduction]
        let notes = data.ColourNotes.Where(n => n.Colorant == colorant.Id && n.Atmosphere == atmosphere).ToList()
        where notes.Count > 0
        let word = EnumWords.Word(atmosphere)
        select new SearchDocument(
            new($"{colorant.Id}-{word}", $"{colorant.Name} in {word}", "colours",
                string.Join("; ", notes.Select(n => n.Colour).Distinct().Take(4)),
                new Address($"/v1/colours?colorant={colorant.Id}&atmosphere={word}")),
            1.15, [.. colorant.Aliases.Select(a => $"{a} in {word}"), $"{colorant.Name} colour {word}"], notes.Select(n => n.Colour));

    private static IEnumerable<SearchDocument> Firings(Dataset data) =>
    [
        .. data.ScheduleTemplates.Select(s => Made("schedules", 1, s.Id, s.Title, s.Note, ["schedule " + s.Title], s.HoursNote)),
        .. data.Disagreements.Select(d => new SearchDocument(
            new(d.Id, d.Topic, "disagreements", d.Adopted, new Address("/v1/disagreements")), 0.6, [],
            [d.PositionA, d.PositionB, d.Comment])),
        .. data.Sources.Select(s => new SearchDocument(
            new(s.Id, s.Citation, "sources", null, new Address("/v1/sources/" + s.Id)), 0.3, [], [])),
    ];

    private static SearchDocument Made(
        string list, double weight, string id, string name, string? text, IEnumerable<string> synonyms,
        params IEnumerable<string?> texts) =>
        new(new(id, name, list, text, new Address($"/v1/{list}/{id}")), weight, synonyms, texts);
}
