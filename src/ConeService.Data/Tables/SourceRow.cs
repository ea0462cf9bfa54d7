namespace ConeService.Data;

/// <summary>One source of the bibliography.</summary>
/// <param name="Id">Name of the source in this package.</param>
/// <param name="Kind">What sort of source it is: chart, paper, standard, textbook, …</param>
/// <param name="Citation">The citation.</param>
/// <param name="Year">Year or span of years as far as known; null where none is given.</param>
/// <param name="Locator">Where in the work, or where it was seen.</param>
/// <param name="Rights">Rights as far as known.</param>
/// <param name="Seen">How much was seen: whole, in-part, no (recalled only), not-applicable.</param>
/// <param name="Via">What was really read: the work, a scan, a reproduction, a report on it; null where a package does not say.</param>
/// <param name="SeenVia">What reproduction or report it was; null where the work itself was read, or nothing.</param>
/// <param name="Accessed">Day on or before which it was seen, YYYY-MM-DD; null where nothing was seen.</param>
/// <param name="Address">Address of the work or, where it has none, of what was read.</param>
/// <param name="Doi">Digital object identifier.</param>
/// <param name="Isbn">International standard book number, 13 digits.</param>
/// <param name="Standard">Number of the standard, law or rule.</param>
/// <param name="Witness">Whose word it is where several sources go back to one print or author: they are one witness.</param>
public sealed record SourceRow(
    string Id,
    string Kind,
    string Citation,
    string? Year,
    string? Locator,
    string Rights,
    string Seen,
    SourceVia? Via = null,
    string? SeenVia = null,
    string? Accessed = null,
    string? Address = null,
    string? Doi = null,
    string? Isbn = null,
    string? Standard = null,
    string? Witness = null);
