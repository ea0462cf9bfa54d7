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
            body => Write(body, ask, detail), [.. fault.Sources.Concat(fault.Causes.SelectMany(c => c.Sources)).Distinct()]);
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
        }

        if (detail.Unlike.Count > 0)
        {
            var links = string.Join(", ", detail.Unlike.Select(u => CardWords.Link(ask.Look, "fault/" + u.Id, u.Name)));
            body.Say($"Easily mistaken for: {links}.", $"Easily mistaken for: {string.Join(", ", detail.Unlike.Select(u => u.Name))}.", "");
        }

        body.List("Dangers, and what to do", CardWords.Told(detail.Cautions, ask.Look));
        body.Say($"How sure: {CardWords.Of(Weakest(fault))}. Change one thing at a time, and fire a test tile first. {fault.Note}".Trim(),
            "small");
    }

    private static Confidence Weakest(Fault fault) => fault.Causes.Select(c => c.Confidence).Append(fault.Confidence).Max();
}
