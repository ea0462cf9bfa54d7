using ConeService.Contract.Quantities;
using ConeService.Contract.Study;
using ConeService.Data;

namespace ConeService.Api.Features.Cards;

/// <summary>A fault of ware: how it is told by looking, why it happens, and what to change.</summary>
internal static class FaultCard
{
    public static Card Of(CardAsk ask)
    {
        var detail = ask.Reference.Study.Fault(ask.Id);
        var fault = detail.Fault;
        return new(
            "fault/" + fault.Id, fault.Name, $"{fault.Name}: how to tell it, why it happens, and what to change.",
            body => Write(body, ask, detail),
            [
                .. fault.Sources.Concat(fault.Causes.SelectMany(c => c.Sources)).Concat(detail.GasReleases.SelectMany(g => g.Sources))
                    .Concat(detail.Oxides.SelectMany(o => o.Sources)).Distinct(),
            ]);
    }

    private static void Write(CardBody body, CardAsk ask, FaultDetail detail)
    {
        var fault = detail.Fault;
        body.Say(fault.Tell, "lead", needed: true);
        // On a short card what to change matters more than how the causes are told apart.
        if (ask.Look.IsShort)
        {
            body.List("Why, and what to change", fault.Causes.Select(c => $"{c.Cause} {c.Change}"));
        }
        else
        {
            if (fault.Synonyms.Count > 0) body.Say($"Also called: {string.Join(", ", fault.Synonyms)}.");
            body.Table("Causes", ["Why it happens", "What gives it away", "What to change"],
                fault.Causes.Select(c => (Cell[])[c.Cause, c.Tell, c.Change]));
            if (detail.GasReleases.Count > 0)
            {
                body.Table("Where gas comes from", ["What gives it off", "Gas", "When"],
                    detail.GasReleases.Select(g => (Cell[])[g.Name, string.Join(", ", g.Gases), When(g)]));
            }

            body.List("Oxides of which too much in a glaze brings it", detail.Oxides.Select(Oxide));
        }

        if (detail.Unlike.Count > 0)
        {
            var links = string.Join(", ", detail.Unlike.Select(u => CardWords.Link(ask.Look, "fault/" + u.Id, u.Name)));
            body.Say($"Easily mistaken for: {links}.", $"Easily mistaken for: {string.Join(", ", detail.Unlike.Select(u => u.Name))}.", "");
        }

        body.List("Dangers, and what to do", CardWords.Told(detail.Cautions, ask.Look));
        body.Say($"How sure: {CardWords.Of(Weakest(detail))}. Change one thing at a time, and fire a test tile first. {fault.Note}".Trim(),
            "small");
    }

    private static string When(GasRelease gas) => gas.CelsiusMax == gas.CelsiusMin
        ? $"near {Both(gas.CelsiusMin)}"
        : gas.CelsiusMax is null ? $"from {Both(gas.CelsiusMin)} on" : $"{Both(gas.CelsiusMin)} to {Both(gas.CelsiusMax)}";

    private static string Both(decimal? celsius) => celsius is { } c
        ? $"{CardWords.Whole(c)} °C ({CardWords.Whole(Temperature.ToFahrenheit(c))} °F)"
        : "";

    private static string Oxide(OxideExpansion oxide) =>
        $"{oxide.Name} ({oxide.Oxide}): {oxide.Effect} the expansion of the glaze"
        + (oxide.UpToPercent is { } most ? $" up to about {CardWords.Number(most)} %" : "") + ".";

    private static Confidence Weakest(FaultDetail detail) => detail.Fault.Causes.Select(c => c.Confidence)
        .Concat(detail.GasReleases.Select(g => g.Confidence)).Concat(detail.Oxides.Select(o => o.Confidence))
        .Append(detail.Fault.Confidence).MaxBy(ConfidenceWeakness.Of);
}
