using ConeService.Contract.Practice;
using ConeService.Data;

namespace ConeService.Api.Features.Cards;

/// <summary>Oxidation and reduction: what they are, what is done at the kiln, and what they do to colour.</summary>
internal static class ConditionsCard
{
    /// <summary>Name of the card.</summary>
    public const string Path = "conditions";

    // The two processes that stand for the two atmospheres, and the schedule that passes through both.
    private const string Oxidising = "electric-oxidation";
    private const string Reducing = "gas-reduction";

    private static readonly string[] Colorants = ["iron", "copper", "cobalt", "rutile"];

    public static Card Of(CardAsk ask)
    {
        var practice = ask.Reference.Practice;
        var (air, smoke) = (practice.Process(Oxidising), practice.Process(Reducing));
        return new(
            Path, "Oxidation and reduction", "What oxidation and reduction are, what is done at the kiln, and what they do to colours.",
            body => Write(body, ask, air, smoke), [.. smoke.Sources.Concat(air.Sources).Distinct()]);
    }

    private static void Write(CardBody body, CardAsk ask, ProcessDetail air, ProcessDetail smoke)
    {
        var notice = smoke.Notice.ToString();
        body.Say($"Oxidation: more air than the fuel needs. {air.Process.AtmosphereNote} {air.Process.Effect}", needed: true);
        body.Say($"Reduction: less air than the fuel needs, so that the flame takes oxygen from glaze and clay. {smoke.Process.Effect}",
            needed: true);
        body.Say($"{smoke.Process.PeopleNearby}", "warn", needed: true);
        body.Table("What it does to colours", ["Colorant", "Oxidation", "Reduction"], Colorants
            .Select(c => ask.Reference.Colours.Colorant(c)).Select(c => (Cell[])
            [
                new(c.Colorant.Name, Markup: CardWords.Link(ask.Look, "colour/" + c.Colorant.Id, c.Colorant.Name)),
                ColourCard.Told(ColourCard.In(c.ColourNotes, Atmosphere.Oxidation).FirstOrDefault(), "–"),
                ColourCard.Told(ColourCard.In(c.ColourNotes, Atmosphere.Reduction).FirstOrDefault(), "–"),
            ]));
        body.Say(CardWords.Swatches, "small");
        var schedule = ask.Reference.Schedules.Detail(Reducing);
        body.Table($"What is done at the kiln: {schedule.Schedule.Name.ToLowerInvariant()}", ["Step", "Atmosphere", "Damper and vent"],
            schedule.Segments.Select(s => (Cell[])
            [
                s.InWords, $"{CardWords.Sentence(EnumWords.Word(s.Atmosphere))}. {s.AtmosphereNote}".Trim(),
                $"{CardWords.Sentence(EnumWords.Word(s.Vent).Replace('-', ' '))}. {s.VentNote}".Trim(),
            ]));
        body.Say($"When: {smoke.Process.AtmosphereNote} {schedule.Schedule.Note}".Trim());
        var cautions = ask.Reference.Practice.Cautions("reduction").Items;
        body.List("Dangers of reduction, and what to do",
            CautionsCard.Gravest(cautions).Select(c => $"{c.Name} ({EnumWords.Word(c.Severity)}): {c.Control}"));
        body.Say(notice);
    }
}
