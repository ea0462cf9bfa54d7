using System.Globalization;
using ConeService.Api.Features.Cards;
using ConeService.Data;
using ConeService.Firing;

namespace ConeService.Api.Features.Posters;

/// <summary>“Read this before you load”: rules of the load check as a list to tick, with the distances that their rows give.</summary>
internal static class LoadPoster
{
    // {0} is the range of the row. A rule that a package does not have is left out with its sentence.
    private static readonly (string Heading, (string Rule, string Sentence)[] Rules)[] Parts =
    [
        ("Before anything goes in",
        [
            ("ask-about-unknown-material", "I know clay and glaze of every piece; what nobody can name stays out until I have asked."),
            ("suspect-the-zero-first", "I have read the cone twice. 06 is far cooler than 6."),
            ("kiln-highest-cone", "The kiln is made for this cone."),
            ("only-firings-kiln-is-for", "The kiln is made for this atmosphere and this kind of firing."),
            ("body-stands-glaze-cone", "Every clay stands the cone of this firing."),
            ("glazes-share-a-cone", "This cone lies within the range of every glaze."),
        ]),
        ("Bisque",
        [
            ("load-bone-dry", "Every piece is bone dry: at the cheek it does not feel cold."),
            ("candle-damp-load", "If I am not sure, the programme begins with {0} at 80 to 95 °C."),
            ("very-thick-greenware-checked", "Anything thicker than {0} was looked at by whoever fires."),
            ("no-heavy-on-thin", "Nothing heavy stands on anything thin."),
        ]),
        ("Glaze",
        [
            ("glaze-free-foot", "Every foot is free of glaze, and {0} above it too."),
            ("runny-glaze-needs-catcher", "A glaze that may run stands on a cookie, a catcher or a stilt."),
            ("glazed-bisque-dry-before-firing", "The glaze is dry."),
            ("glazed-pieces-apart", "Glazed pieces stand {0} apart and touch nothing."),
            ("kiln-wash-under-glaze", "The shelves have kiln wash, on the upper side only."),
            ("nothing-damp-with-overglaze", "Nothing damp and no greenware goes in with lustre, decals or china paint."),
        ]),
        ("In the kiln",
        [
            ("three-posts-per-shelf", "Each shelf stands on {0}, one above another."),
            ("shelf-above-tallest-piece", "Above the tallest piece {0} are free."),
            ("clearance-to-elements", "Ware keeps {0} from the elements."),
            ("clearance-round-thermocouple", "Around the thermocouple {0} are free."),
            ("three-witness-cones", "Three witness cones stand where the spy hole shows them: one below, the cone, one above."),
            ("no-opening-while-hot", "The kiln stays shut until it is below {0} inside."),
        ]),
    ];

    public static Poster Of(FiringReference reference)
    {
        var rules = reference.Dataset.LoadRules.ToDictionary(r => r.Id);
        var sheet = new PosterSheet()
            .Say("If you can't tick a line, ask whoever answers for the kiln before you switch it on.", "warn")
            .Blanks("Kiln:", "Cone:", "Firing and atmosphere:", "Date:", "Loaded by:", "Looked at by:");
        var used = new List<LoadRuleRow>();
        foreach (var (heading, own) in Parts)
        {
            var there = own.Where(r => rules.ContainsKey(r.Rule)).ToList();
            sheet.List(heading, there.Select(r => Told(r.Sentence, rules[r.Rule])), isTicked: true);
            used.AddRange(there.Select(r => rules[r.Rule]));
        }

        sheet.Say(reference.Practice.Cautions().Notice.ToString(), "small");
        return new("before-you-load", "Read this before you load", [sheet], [.. used.SelectMany(r => r.Sources).Distinct()]);
    }

    private static string Told(string sentence, LoadRuleRow rule)
    {
        if ((rule.ValueMin ?? rule.ValueMax) is not { } low) return sentence;
        var to = rule.ValueMax is { } high && high != low ? " to " + CardWords.Number(high) : "";
        var range = $"{CardWords.Number(low)}{to} {(rule.Unit == "h" ? "hours" : rule.Unit)}";
        return string.Format(CultureInfo.InvariantCulture, sentence, range);
    }
}
