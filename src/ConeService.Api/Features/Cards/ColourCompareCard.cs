using ConeService.Api.Http;
using ConeService.Contract.Answers;
using ConeService.Contract.Colours;
using ConeService.Data;

namespace ConeService.Api.Features.Cards;

/// <summary>The same colorant in oxidation and in reduction; without a question, the usual colorants side by side.</summary>
internal static class ColourCompareCard
{
    /// <summary>Name of the card.</summary>
    public const string Path = "colour-compare";

    public static readonly string[] Names = ["colorant", "base", "cone", "percent"];

    public static Card Of(CardAsk ask)
    {
        ColourAnswer? answer = null;
        RefusedException? refused = null;
        try
        {
            if (ask["colorant"] is { } colorant)
                answer = ask.Reference.Colours.Find(colorant, null, ask["base"], ask["cone"], ask["percent"]);
        }
        catch (RefusedException failure)
        {
            refused = failure;
        }

        return new(
            CardFrame.Path(Path, ask, Names), "Oxidation beside reduction",
            "What one colorant gives in oxidation and in reduction, in the same glaze.", body => Write(body, ask, answer, refused),
            answer?.Sources ?? [.. ask.Reference.Dataset.Colorants.SelectMany(c => c.Sources).Distinct()])
        {
            Refused = refused,
        };
    }

    /// <summary>The colorants that are oxides of a metal, with a colour in each of the two atmospheres.</summary>
    public static IEnumerable<(string Id, string Name, ColourNote? Oxidation, ColourNote? Reduction)> Pairs(
        Firing.FiringReference reference)
    {
        foreach (var colorant in reference.Dataset.Colorants.Where(c => c.Kind == ColorantKind.Oxide))
        {
            var notes = reference.Colours.Colorant(colorant.Id).ColourNotes;
            var oxidation = ColourCard.In(notes, Atmosphere.Oxidation).FirstOrDefault();
            var reduction = ColourCard.In(notes, Atmosphere.Reduction).FirstOrDefault();
            if (oxidation is not null || reduction is not null) yield return (colorant.Id, colorant.Name, oxidation, reduction);
        }
    }

    private static void Write(CardBody body, CardAsk ask, ColourAnswer? answer, RefusedException? refused)
    {
        var dataset = ask.Reference.Dataset;
        var form = new CardForm(ask, Path)
            .Choice("colorant", "Colorant", dataset.Colorants.Select(c => (c.Id, c.Name)), "iron")
            .Choice("base", "Base glaze", [("", "any"), .. dataset.BaseGlazes.Where(b => b.Id != "any").Select(b => (b.Id, b.Name))], "");
        if (!ask.Look.IsShort) form = form.Line("cone", "Cone", "10").Line("percent", "Percent added", "2");
        form.Into(body, "Compare");
        CardFrame.Wrong(body, refused);
        if (answer is null)
        {
            body.Table("What the usual oxides give", ["Colorant", "Oxidation", "Reduction"], Pairs(ask.Reference).Select(p => (Cell[])
            [
                new(p.Name, Markup: CardWords.Link(ask.Look, "colour/" + p.Id, p.Name)), ColourCard.Told(p.Oxidation, "–"),
                ColourCard.Told(p.Reduction, "–"),
            ]));
            body.Say(CardWords.Swatches, "small");
            return;
        }

        foreach (var colour in answer.Answers) Tell(body, colour);
        body.List("Cautions", CardWords.Told(answer.Cautions, ask.Look));
        body.Say(answer.FoodContact.ToString());
        foreach (var notice in answer.Notices) body.Say(notice.ToString(), "small");
    }

    private static void Tell(CardBody body, ResolvedColour colour)
    {
        var air = CardWords.Sentence(EnumWords.Word(colour.Atmosphere)) + ": ";
        var text = (colour.Colour ?? colour.Explanation).ToString();
        var swatch = colour.Swatch is { } s ? CardWords.Swatch(s.Hex) : "";
        body.Say($"{swatch}<strong>{HtmlPage.Encode(air)}</strong>{HtmlPage.Encode(text)}", air + text + "00", "lead", needed: true);
        if (colour.Colour is not null) body.Say(colour.Explanation.ToString());
        if (colour.Confidence is { } confidence) body.Say($"How sure: {CardWords.Of(confidence)}.", "small");
        foreach (var warning in colour.Warnings) body.Say(warning.Message.ToString(), "warn");
    }
}
