using System.Collections.Frozen;

namespace ConeService.Api.Http.Problems;

/// <summary>Every kind of problem the service answers with. A test holds it against the codes that the code emits.</summary>
internal static class ProblemCatalogue
{
    /// <summary>The kinds, by code.</summary>
    public static IReadOnlyList<ProblemKind> All { get; } =
    [
        new("additive-missing", 400, "Additive not named", "An entry of additives holds a percentage and no name.", "Name an additive or a colorant, or leave the entry out."),
        new("additive-unknown", 400, "Unknown additive", "No additive or colorant of that name is in the data package.", "Choose one that GET /v1/colorants lists, or one of the near names in the answer."),
        new("atmosphere-unknown", 400, "Unknown atmosphere", "Colours are told for a closed list of atmospheres.", "Use oxidation, neutral, reduction, salt-soda, post-fire-reduction or local-reduction."),
        new("base-unknown", 400, "Unknown base glaze", "Colours are told for a closed list of bases.", "Choose one that GET /v1/colorants lists, or leave the base out."),
        new("chart-unknown", 400, "Unknown chart", "No published chart of that name is in the data package.", "Choose one of the names that GET /v1/charts lists."),
        new("colorant-missing", 400, "Colorant not named", "A percentage stands without the colorant that it is of.", "Name a colorant that GET /v1/colorants lists."),
        new("colorant-unknown", 400, "Unknown colorant", "No colorant of that name is in the data package.", "Choose one that GET /v1/colorants lists, or one of the near names in the answer."),
        new("colour-unknown", 400, "Unknown colour word", "Colours are filtered by a closed list of words.", "Choose one that GET /v1/colorants lists under colourWords."),
        new("cone-as-number", 400, "Cone sent as a number", "Cones 06 and 6 are more than 200 °C apart. As JSON numbers, or in a spreadsheet cell formatted as a number, both are 6: earthenware would melt onto the shelf, or a stoneware glaze would stay unmelted.", "Send the cone as text: \"06\" or \"6\". In a spreadsheet format the column as text before typing."),
        new("cone-not-on-chart", 400, "Cone not on this chart", "The cone exists, but the chart asked for does not print it.", "Ask another chart, or one of the neighbouring cones."),
        new("cone-unknown", 400, "No such cone", "No chart prints a cone of that number.", "Use one of the nearest real cones named in the answer; GET /v1/cones lists them all."),
        new("cone-unreadable", 400, "Not a cone", "The text is not a cone as people write it.", "Write 06, o6, ^6, cone 6, Δ6, 05.5, 05½ or 05 1/2."),
        new("cone-zero", 400, "There is no cone 0", "The scale runs from 022 down in number to 01 while getting hotter; then 1 follows directly. 0 and 00 do not exist.", "The neighbours where a zero would be are 01 and 1."),
        new("content-type-unsupported", 415, "Unsupported content type", "The body is not in a format that this address reads.", "Send one of the media types named in the answer, in the Content-Type header."),
        new("csv-headers", 400, "Wrong CSV headers", "The first line of the CSV does not name the columns that this address reads.", "For conversions the columns are cone, temperature, rate and chart, in any order; cone or temperature must be there."),
        new("csv-malformed", 400, "Malformed CSV", "A line of the CSV can't be read.", "Write RFC 4180 CSV in UTF-8 with a comma between cells; put quotation marks around a cell that holds a comma."),
        new("empty-request", 400, "Nothing was asked", "The request holds no lines.", "Send at least one line."),
        new("ingredient-repeated", 400, "Ingredient given twice", "An ingredient stands twice in a recipe, and nothing says which amount is meant.", "Give it once, with the sum."),
        new("internal-error", 500, "The service failed", "This is a fault of the service, not of the request.", "Try again later, and tell whoever runs the service."),
        new("invalid-request", 400, "Several things are wrong", "The request has findings of more than one kind; each stands in errors with its field.", "Mend what errors names; each code there has a page of its own under /problems/."),
        new("kiln-unknown", 400, "Unknown kiln", "A kiln is named by how it is heated.", "Use electric, gas, wood, raku or vapour."),
        new("line-ambiguous", 400, "Line names a cone and a temperature", "A line of a conversion is either a cone, answered with a temperature, or a temperature, answered with a cone.", "Leave one of the two out."),
        new("line-empty", 400, "Line names nothing to convert", "A line of a conversion needs a cone or a temperature.", "Add one of the two."),
        new("malformed-json", 400, "Malformed JSON", "The body is not JSON, or not of the form that this address reads.", "Check the place that the answer names; the form is in /openapi/v1.json."),
        new("method-not-allowed", 405, "Method not allowed", "This address exists, but not for that HTTP method.", "Use one of the methods in the Allow header."),
        new("not-acceptable", 406, "Not available in that media type", "This address can't answer in the media type that the Accept header asks for.", "Ask for one of the media types named in the answer, or leave the header out for JSON."),
        new("not-found", 404, "Not found", "There is nothing at this address, or nothing of this name in the data package.", "All addresses are listed in /openapi/v1.json and at /docs."),
        new("percent-out-of-range", 400, "Percentage out of range", "A percentage of a glaze lies above 0 and is 100 at most.", "Leave out what is not in the glaze."),
        new("percent-sum", 400, "Percentages above 100", "The percentages of a recipe add up to more than 100.", "Give parts for 100 of glaze, not grams."),
        new("percent-unreadable", 400, "Not a percentage", "The text is not a number.", "Write 0.5 or 0.5 %."),
        new("rate-not-applicable", 400, "The chart states no rate", "The Seger charts, and the highest refractories cones, were printed without a heating rate, so nothing can be computed for one.", "Leave the rate out, or ask a chart that prints rates."),
        new("rate-not-computable", 400, "Not computable at this rate", "The chart prints this cone at one rate only, and the self-supporting chart, whose curves are borrowed, does not print it.", "Ask for the printed rate."),
        new("rate-out-of-range", 400, "Rate out of range", "End points are computed from 5 to 600 °C/h. Nothing was measured below 15, and above 150 the kiln's own differences outweigh the cone.", "Give the rate of the last 100 °C of the firing."),
        new("rate-unit-missing", 400, "Rate without a unit", "60 °C/h and 60 °F/h are different firings; no unit is guessed.", "Write 60C/h, 108F/h or 1C/min."),
        new("rate-unreadable", 400, "Not a heating rate", "The text is not a number with the unit of a rate.", "Write 60C/h, 108F/h, 60K/h or 1C/min."),
        new("repeated-parameter", 400, "Parameter given twice", "A query parameter was given more than once, and nothing says which one is meant.", "Give it once."),
        new("request-too-large", 413, "Request too large", "The body is larger than this address reads.", "Split it."),
        new("temperature-outside-scale", 400, "Temperature outside the chart", "No cone of the chart is down yet, or every one is.", "Check the unit: 1222 °C and 2232 °F are the same temperature."),
        new("temperature-unit-missing", 400, "Temperature without a unit", "No unit is guessed: the wrong one is a firing of several hundred degrees more or less.", "Write 1222C, 2232F or 1495K."),
        new("temperature-unreadable", 400, "Not a temperature", "The text is not a number with the unit of a temperature.", "Write 1222C, 2232F or 1495K."),
        new("too-many-ingredients", 400, "Too many ingredients", "A recipe holds at most 20 colorants and 20 additives.", "Leave out what does not matter for the colour."),
        new("too-many-lines", 400, "Too many lines", "A conversion request holds at most 1,000 lines.", "Send several requests."),
        new("topic-unknown", 400, "Unknown topic", "No fact of the data package is about that.", "Choose one of the topics named in the answer."),
        new("units-unknown", 400, "Unknown units", "The member units names the unit of bare numbers: C or F.", "Send \"units\": \"C\" or \"units\": \"F\"."),
        new("unknown-member", 400, "Unknown JSON member", "The body has a member that this address does not know. It is refused rather than dropped: a misspelt rate must not silently become the default rate.", "Correct the name, or leave the member out."),
        new("unknown-parameter", 400, "Unknown query parameter", "The address does not know the parameter. It is refused rather than dropped: a misspelt rate must not silently become the default rate.", "Correct the name, or leave it out."),
    ];

    private static readonly FrozenDictionary<string, ProblemKind> ByCode = All.ToFrozenDictionary(k => k.Code);

    /// <summary>The kind of a code, or null.</summary>
    public static ProblemKind? Find(string code) => ByCode.GetValueOrDefault(code);
}
