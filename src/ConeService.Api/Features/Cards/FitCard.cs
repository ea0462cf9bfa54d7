using ConeService.Contract.Answers;
using ConeService.Contract.Loads;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Api.Features.Cards;

/// <summary>Will this clay with this glaze survive that firing? The load check for a single piece, as a form.</summary>
internal static class FitCard
{
    /// <summary>Name of the card.</summary>
    public const string Path = "fit";

    public static readonly string[] Names = ["body", "glaze", "cone", "atmosphere", "firing", "use"];

    public static Card Of(CardAsk ask)
    {
        PairingAnswer? answer = null;
        RefusedException? refused = null;
        try
        {
            if (ask["body"] is not null || ask["cone"] is not null)
            {
                // The load check leaves a material that nobody knows to whoever sent it, who can describe it; on a card there is no
                // room for that, and the word is mostly misspelt.
                Known(ask);
                answer = ask.Reference.Loads.Check(new PairingQuery(
                    ask["body"], ask["glaze"], ask["cone"], ask["atmosphere"] ?? "oxidation", ask["firing"] ?? "glaze", null, ask["use"]));
            }
        }
        catch (RefusedException failure)
        {
            refused = new([.. failure.Findings.Select(f => f.Field == "firingKind" ? f with { Field = "firing" } : f)]);
        }

        return new(
            CardFrame.Path(Path, ask, Names), "Will it survive the firing?",
            "A clay, a glaze and a firing: do they go together, why not, and what to do instead.",
            body => Write(body, ask, answer, refused), answer?.Sources ?? ["common-practice"])
        {
            Refused = refused,
        };
    }

    private static void Known(CardAsk ask)
    {
        var findings = new List<Finding>();
        Look("body", ask["body"], ask.Reference.Materials.Bodies().Items.Select(b => b.Id), "cards.clay-unknown");
        foreach (var glaze in (ask["glaze"] ?? "").Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
            Look("glaze", glaze, ask.Reference.Materials.Glazes().Items.Select(g => g.Id), "cards.glaze-unknown");
        if (findings.Count > 0) throw new RefusedException(findings);

        void Look(string field, string? sent, IEnumerable<string> ids, string message)
        {
            if (sent is null || ids.Contains(sent, StringComparer.OrdinalIgnoreCase)) return;
            var near = NearMatches.Find(sent, ids);
            findings.Add(new(FindingCodes.WordUnknown, field, sent, Message.Of(message, ("sent", sent)), Message.Verbatim(near)));
        }
    }

    private static void Write(CardBody body, CardAsk ask, PairingAnswer? answer, RefusedException? refused)
    {
        var materials = ask.Reference.Materials;
        // Once something was asked, an empty field is what was answered.
        var isAsked = ask["body"] is not null || ask["cone"] is not null;
        var form = new CardForm(ask, Path)
            .Choice("body", "Clay", materials.Bodies().Items.Select(b => (b.Id, CardWords.Sentence(b.Name))), "mid-range-stoneware-light")
            .Choice("glaze", "Glaze", [("", "none"), .. materials.Glazes().Items.Select(g => (g.Id, CardWords.Sentence(g.Name)))],
                isAsked ? "" : "mid-range-gloss")
            .Choice("cone", "Cone", Cones(ask), "6")
            .Choice("atmosphere", "Atmosphere", EnumWords.All<Atmosphere>().Where(w => w is "oxidation" or "neutral" or "reduction")
                .Select(w => (w, CardWords.Sentence(w))), "oxidation");
        if (!ask.Look.IsShort)
        {
            form = form
                .Choice("firing", "Firing", ask.Reference.Loads.Kinds().Items
                    .Select(k => (EnumWords.Word(k.Id), CardWords.Sentence(k.Name))), "glaze")
                .Choice("use", "Use", [("", "not said"), ("food", "for food"), ("decorative", "for decoration")], "");
        }

        form.Into(body, "Check");
        CardFrame.Wrong(body, refused);
        if (answer is null)
        {
            if (refused is null) body.Say("Choose a clay, a glaze and a firing, and the card says whether they go together.");
            return;
        }

        body.Say(answer.Verdict switch
        {
            Verdict.Accept => "They go together.",
            Verdict.Review => "Perhaps: whoever fires must look at it first.",
            _ => "No: do not fire it so.",
        }, "lead", needed: true);
        body.List("Why", answer.Reasons.Select(r => r.Message.ToString()));
        if (answer.Instead is { } instead) body.Say(instead.ToString(), "warn");
        body.List("What to do instead", answer.Reasons.Select(r => r.Instead?.ToString() ?? "").Distinct());
        body.List("A firing that would do", answer.SuggestedFirings.Select(f =>
            $"{CardWords.Sentence(EnumWords.Word(f.FiringKind))} firing to cone {f.Cone} in {EnumWords.Word(f.Atmosphere)}, "
            + $"kiln: {CardWords.Words(f.KilnHeats)}."));
        body.List("No firing takes it", answer.Unplaced.Select(u => u.Message.ToString()));
        body.List("Cautions", answer.Cautions.Select(c => $"{c.Hazard} ({EnumWords.Word(c.Severity)}): {c.Control}"));
        body.List("Assumed", answer.Assumed.Select(a => a.Reason.ToString()));
        body.Say($"How sure: {CardWords.Of(answer.Confidence)}. Tests on your own clay come before any table.", "small");
    }

    private static IEnumerable<(string Value, string Text)> Cones(CardAsk ask) => ask.Reference.Dataset.UsualFirings
        .Select(u => u.Cone).Distinct().Select(c => ask.Reference.Cones.Read(c))
        .OrderDescending().Select(c => (c.ToString(), c.ToString()));
}
