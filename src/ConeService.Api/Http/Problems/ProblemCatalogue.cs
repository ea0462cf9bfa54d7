using System.Collections.Frozen;

namespace ConeService.Api.Http.Problems;

/// <summary>Every kind of problem the service answers with. A test holds it against the codes that the code emits.</summary>
internal static class ProblemCatalogue
{
    /// <summary>The kinds, by code.</summary>
    public static IReadOnlyList<ProblemKind> All { get; } =
    [
        new("atmosphere-unknown", 400, "Unknown atmosphere", "The atmosphere of a firing is oxidation, neutral or reduction.", "Use one of the three words, or leave the member out."),
        new("chart-unknown", 400, "Unknown chart", "No published chart of that name is in the data package.", "Choose one of the names that GET /v1/charts lists."),
        new("chart-without-kinetics", 400, "Chart can't follow a firing", "The chart states no heating rate, so nothing can be said of any other history.", "Use a chart that prints rates; the default is witness-self-supporting."),
        new("cone-as-number", 400, "Cone sent as a number", "Cones 06 and 6 are more than 200 °C apart. As JSON numbers, or in a spreadsheet cell formatted as a number, both are 6: earthenware would melt onto the shelf, or a stoneware glaze would stay unmelted.", "Send the cone as text: \"06\" or \"6\". In a spreadsheet format the column as text before typing."),
        new("cone-not-on-chart", 400, "Cone not on this chart", "The cone exists, but the chart asked for does not print it.", "Ask another chart, or one of the neighbouring cones."),
        new("cone-outside-load-check", 400, "Cone outside the load check", "A load is judged on the potter's scale, cones 022 to 14, on which distances in whole cones are counted. Seger letters and the refractories cones are not on it.", "Use the cone of that scale that the firing goes to."),
        new("cone-unknown", 400, "No such cone", "No chart prints a cone of that number.", "Use one of the nearest real cones named in the answer; GET /v1/cones lists them all."),
        new("cone-unreadable", 400, "Not a cone", "The text is not a cone as people write it.", "Write 06, o6, ^6, cone 6, Δ6, 05.5, 05½ or 05 1/2."),
        new("cone-zero", 400, "There is no cone 0", "The scale runs from 022 down in number to 01 while getting hotter; then 1 follows directly. 0 and 00 do not exist.", "The neighbours where a zero would be are 01 and 1."),
        new("content-type-unsupported", 415, "Unsupported content type", "The body is not in a format that this address reads.", "Send one of the media types named in the answer, in the Content-Type header."),
        new("cooling-ambiguous", 400, "Cooling stated twice, or not at all", "The cooling of a programme is a steady rate, or a natural cooling with a time constant or a first rate.", "Give exactly one of them, or leave all out to end with the last segment."),
        new("csv-headers", 400, "Wrong CSV headers", "The first line of the CSV does not name the columns that this address reads.", "For conversions the columns are cone, temperature, rate and chart, in any order; cone or temperature must be there."),
        new("csv-malformed", 400, "Malformed CSV", "A line of the CSV can't be read.", "Write RFC 4180 CSV in UTF-8 with a comma between cells; put quotation marks around a cell that holds a comma."),
        new("empty-request", 400, "Nothing was asked", "The request holds no lines, or no pieces.", "Send at least one."),
        new("find-unknown", 400, "Not told what to find", "An inverse question asks for the peak, the hold or the rate of the hottest segment.", "Send \"find\": \"peak\", \"hold\" or \"rate\"."),
        new("firing-ambiguous", 400, "Programme or log?", "A firing is either a programme (segments) or a log; a list of firings carries everything in its items.", "Send one of the two, without members that belong to the other."),
        new("internal-error", 500, "The service failed", "This is a fault of the service, not of the request.", "Try again later, and tell whoever runs the service."),
        new("invalid-request", 400, "Several things are wrong", "The request has findings of more than one kind; each stands in errors with its field.", "Mend what errors names; each code there has a page of its own under /problems/."),
        new("line-ambiguous", 400, "Line names a cone and a temperature", "A line of a conversion is either a cone, answered with a temperature, or a temperature, answered with a cone.", "Leave one of the two out."),
        new("line-empty", 400, "Line names nothing to convert", "A line of a conversion needs a cone or a temperature.", "Add one of the two."),
        new("log-empty", 400, "Empty log", "The log holds no samples.", "Send a header line and two samples or more."),
        new("log-temperature-out-of-range", 400, "Temperature no studio has", "A sample is colder than −30 °C or hotter than 1500 °C: a broken or reversed thermocouple, or the wrong unit.", "Check the unit and the line named; take broken readings out."),
        new("log-time-backwards", 400, "Time runs backwards", "A few samples out of order are sorted, and a log with its newest sample first is turned round; this one goes back and on again.", "Split the file where the clock was set back, or correct its times."),
        new("log-time-unit-missing", 400, "Time without a unit", "The time column holds bare numbers, and its header does not say what of.", "Name the column minutes, seconds or hours, or write hh:mm:ss or ISO 8601 timestamps."),
        new("log-time-unreadable", 400, "Not a time", "A time of the log can't be read, or the log lasts longer than any firing.", "Write numbers with a unit in the header, hh:mm:ss, or ISO 8601 timestamps."),
        new("log-too-short", 400, "Log too short", "One moment is not a firing.", "Send samples at two times or more."),
        new("log-value-unreadable", 400, "Not a temperature reading", "A sample of the log is not a finite number.", "Correct the line named, or take it out if the reading was lost."),
        new("malformed-json", 400, "Malformed JSON", "The body is not JSON, or not of the form that this address reads.", "Check the place that the answer names; the form is in /openapi/v1.json."),
        new("material-ambiguous", 400, "Material named twice", "A piece names a material and describes one of its own in the same place, and nothing says which is meant.", "Send body or ownBody, glaze or ownGlaze."),
        new("member-missing", 400, "Member missing", "A member that has no default was left out. Nothing that decides over ware is guessed.", "Add the member; what it may hold stands in the answer."),
        new("method-not-allowed", 405, "Method not allowed", "This address exists, but not for that HTTP method.", "Use one of the methods in the Allow header."),
        new("not-acceptable", 406, "Not available in that media type", "This address can't answer in the media type that the Accept header asks for.", "Ask for one of the media types named in the answer, or leave the header out for JSON."),
        new("not-found", 404, "Not found", "There is nothing at this address, or nothing of this name in the data package.", "All addresses are listed in /openapi/v1.json and at /docs."),
        new("number-expected", 400, "Not a number", "The member is a JSON number.", "Write the number without quotation marks and without its unit."),
        new("number-out-of-range", 400, "Number out of range", "A number of the request is outside what can be computed with.", "Use a number in the range that the answer names."),
        new("observation-unreadable", 400, "Witness cone not described", "A witness cone needs its name and exactly one of look (down or standing), clock and degrees.", "Send {\"cone\": \"6\", \"clock\": 4}, say."),
        new("piece-id-repeated", 400, "Piece named twice", "Two pieces of the load have the same id, so their verdicts could not be told apart.", "Give each piece an id of its own; several alike are one piece with a count."),
        new("programme-does-nothing", 400, "Programme does nothing", "The programme neither moves nor holds.", "Give a target other than the start, or a hold."),
        new("range-inverted", 400, "Range upside down", "The upper end of a cone range is cooler than the lower. With a zero in front the larger number is the cooler cone: 06, 05, 04 rise, and so do 5, 6, 7.", "Turn the ends round, or look for a zero too many or too few."),
        new("rate-not-applicable", 400, "The chart states no rate", "The Seger charts, and the highest refractories cones, were printed without a heating rate, so nothing can be computed for one.", "Leave the rate out, or ask a chart that prints rates."),
        new("rate-not-computable", 400, "Not computable at this rate", "The chart prints this cone at one rate only, and the self-supporting chart, whose curves are borrowed, does not print it.", "Ask for the printed rate."),
        new("rate-out-of-range", 400, "Rate out of range", "End points are computed from 5 to 600 °C/h. Nothing was measured below 15, and above 150 the kiln's own differences outweigh the cone.", "Give the rate of the last 100 °C of the firing."),
        new("rate-unit-missing", 400, "Rate without a unit", "60 °C/h and 60 °F/h are different firings; no unit is guessed.", "Write 60C/h, 108F/h or 1C/min."),
        new("rate-unreadable", 400, "Not a heating rate", "The text is not a number with the unit of a rate.", "Write 60C/h, 108F/h, 60K/h or 1C/min."),
        new("repeated-parameter", 400, "Parameter given twice", "A query parameter was given more than once, and nothing says which one is meant.", "Give it once."),
        new("request-too-large", 413, "Request too large", "The body is larger than this address reads.", "Split it."),
        new("segment-without-target", 400, "Segment without a target", "A segment goes to a temperature and may hold there; without a target nothing tells where.", "Give each segment its target."),
        new("temperature-outside-scale", 400, "Temperature outside the chart", "No cone of the chart is down yet, or every one is.", "Check the unit: 1222 °C and 2232 °F are the same temperature."),
        new("temperature-unit-missing", 400, "Temperature without a unit", "No unit is guessed: the wrong one is a firing of several hundred degrees more or less.", "Write 1222C, 2232F or 1495K."),
        new("temperature-unreadable", 400, "Not a temperature", "The text is not a number with the unit of a temperature.", "Write 1222C, 2232F or 1495K."),
        new("text-expected", 400, "Not a text", "The member is text.", "Put it in quotation marks."),
        new("thermocouple-unknown", 400, "Unknown thermocouple", "No tolerance is known for that type, standard and class.", "Use one of the combinations that the answer lists."),
        new("too-many-coats", 400, "Too many coats", "A piece has at most 12 coats here.", "Leave out what lies under others of the same sort."),
        new("too-many-lines", 400, "Too many lines", "A conversion request holds at most 1,000 lines.", "Send several requests."),
        new("too-many-pieces", 400, "Too many pieces", "A load holds at most 2,000 pieces.", "Send pieces that are alike as one piece with a count, or several requests."),
        new("too-many-segments", 400, "Too many segments", "A programme holds at most 10,000 segments.", "Send a log as log or as text/csv."),
        new("topic-unknown", 400, "Unknown topic", "No fact of the data package is about that.", "Choose one of the topics named in the answer."),
        new("units-contradict", 400, "Units contradict each other", "The header of the log names another unit than the request.", "Leave the parameter out, or correct it."),
        new("units-missing", 400, "Unit of temperature missing", "No unit is guessed: the wrong one is a firing of several hundred degrees more or less.", "Say C or F in units, in the header of the log, or in ?units=."),
        new("units-suspect", 400, "°C that look like °F", "The temperatures are far above any kiln in °C, and ordinary in °F. You are asked instead of answered.", "Send them again with the right unit."),
        new("units-unknown", 400, "Unknown units", "The member units names the unit of bare numbers: C or F.", "Send \"units\": \"C\" or \"units\": \"F\"."),
        new("unknown-member", 400, "Unknown JSON member", "The body has a member that this address does not know. It is refused rather than dropped: a misspelt rate must not silently become the default rate.", "Correct the name, or leave the member out."),
        new("unknown-parameter", 400, "Unknown query parameter", "The address does not know the parameter. It is refused rather than dropped: a misspelt rate must not silently become the default rate.", "Correct the name, or leave it out."),
        new("upload-truncated", 400, "Upload broke off", "The body ended before its stated length.", "Send the file again."),
        new("word-unknown", 400, "Unknown word", "The member holds one of a few words, and this is none of them.", "Use one of the words named in the answer."),
    ];

    private static readonly FrozenDictionary<string, ProblemKind> ByCode = All.ToFrozenDictionary(k => k.Code);

    /// <summary>The kind of a code, or null.</summary>
    public static ProblemKind? Find(string code) => ByCode.GetValueOrDefault(code);
}
