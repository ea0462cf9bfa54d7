using ConeService.Api.Http;
using ConeService.Contract.Colours;
using ConeService.Data;

namespace ConeService.Api.Features.Cards;

/// <summary>The colours of one colorant, oxidation beside reduction.</summary>
internal static class ColourCard
{
    // Told, and never first: what nobody should mix.
    private const string Historic = "lead";

    public static Card Of(CardAsk ask)
    {
        var detail = ask.Reference.Colours.Colorant(ask.Id);
        var name = detail.Colorant.Name;
        return new(
            "colour/" + detail.Colorant.Id, name + " in a glaze",
            $"Which colours {name.ToLowerInvariant()} gives in oxidation and in reduction, base by base.",
            body => Write(body, ask, detail), detail.Sources);
    }

    /// <summary>The notes of an atmosphere, those of usual practice first.</summary>
    public static IEnumerable<ColourNote> In(IEnumerable<ColourNote> notes, Atmosphere atmosphere) => notes
        .Where(n => n.Atmosphere == atmosphere || n.Atmosphere == Atmosphere.Any)
        .OrderBy(n => n.Base == Historic).ThenBy(n => n.SeenOn != SeenOn.OwnGlaze);

    /// <summary>A colour with its swatch.</summary>
    public static Cell Told(ColourNote? note, string otherwise)
    {
        if (note is null) return otherwise;
        var text = CardWords.Sentence(note.Colour);
        return new(text + "00", Markup: CardWords.Swatch(note.Swatch.Hex) + HtmlPage.Encode(text));
    }

    private static void Write(CardBody body, CardAsk ask, ColorantDetail detail)
    {
        var bases = ask.Reference.Dataset.BaseGlazes.ToDictionary(b => b.Id, b => b.Name);
        foreach (var coverage in detail.Coverage.Where(c => !c.Covered)) body.Say(coverage.Statement.ToString());
        var first = detail.Cautions.Take(ask.Look.IsShort ? 1 : detail.Cautions.Count).Select(CardWords.Of).ToList();
        if (ask.Look.IsShort && first.Count > 0) body.Say(first[0], "warn");
        var rows = bases.Keys.OrderBy(b => b == Historic).ThenBy(b => b == "any").SelectMany(b => Rows(detail, b, bases[b])).ToList();
        body.Table("Colours by base", ["Base glaze", "Oxidation", "Reduction"], rows);
        if (ask.Look.IsShort) body.Say(CardWords.Swatches, "small");
        else body.List("Cautions", first);

        body.Say(detail.FoodContact.ToString());
        foreach (var notice in detail.Notices) body.Say(notice.ToString(), "small");
        body.Say(
            CardWords.Link(ask.Look, "colour-compare", "Compare recipes", "colorant=" + detail.Colorant.Id), "Compare recipes", "more");
    }

    // One line of the table for each pair of notes, so that the two atmospheres stand beside each other.
    private static IEnumerable<Cell[]> Rows(ColorantDetail detail, string id, string name)
    {
        var own = detail.ColourNotes.Where(n => n.Base == id).ToList();
        var (oxidation, reduction) = (In(own, Atmosphere.Oxidation).ToList(), In(own, Atmosphere.Reduction).ToList());
        for (var i = 0; i < Math.Max(oxidation.Count, reduction.Count); i++)
        {
            yield return
            [
                name, With(oxidation.ElementAtOrDefault(i)), With(reduction.ElementAtOrDefault(i)),
            ];
        }
    }

    private static Cell With(ColourNote? note)
    {
        if (note is null) return "–";
        var colour = Told(note, "");
        List<string> more = [];
        if (note.Percent is { } percent)
        {
            var amount = percent.Min == percent.Max
                ? CardWords.Number(percent.Min) : $"{CardWords.Number(percent.Min)} to {CardWords.Number(percent.Max)}";
            more.Add($"{amount} %");
        }

        if (note.Condition is { } condition) more.Add(condition.TrimEnd('.'));
        more.Add(CardWords.Of(note.Confidence));
        var text = string.Join("; ", more);
        return new($"{colour.Text} {text}", Markup: $"{colour.Html} <span class=\"small\">({HtmlPage.Encode(text)})</span>");
    }
}
