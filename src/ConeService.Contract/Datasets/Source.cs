using ConeService.Contract.Answers;
using ConeService.Data;

namespace ConeService.Contract.Datasets;

/// <summary>One source of the bibliography.</summary>
/// <param name="Id">Id of the source.</param>
/// <param name="SourceKind">What sort of source it is: chart, paper, standard, textbook, …</param>
/// <param name="Name">The citation.</param>
/// <param name="Year">Year or span of years as far as known; null where none is given.</param>
/// <param name="Locator">Where in the work, or where it was seen.</param>
/// <param name="Rights">Rights as far as known.</param>
/// <param name="Seen">How much was seen: whole, in-part, no (recalled only), not-applicable.</param>
/// <param name="Via">What was really read: work, scan, reproduction, report (what another says of it), memory, not-applicable; null
/// where the data package does not say.</param>
/// <param name="SeenVia">Which reproduction or report it was.</param>
/// <param name="Accessed">Day on or before which it was seen; null where nothing was seen.</param>
/// <param name="Address">Address of the work or, where it has none, of what was read.</param>
/// <param name="Doi">Digital object identifier.</param>
/// <param name="Isbn">International standard book number, 13 digits.</param>
/// <param name="Standard">Number of the standard, law or rule.</param>
/// <param name="Witness">Whose word it is where several sources go back to one print or author.</param>
public sealed record Source(
    string Id,
    string SourceKind,
    string Name,
    string? Year,
    string? Locator,
    string Rights,
    string Seen,
    SourceVia? Via,
    string? SeenVia,
    string? Accessed,
    string? Address,
    string? Doi,
    string? Isbn,
    string? Standard,
    string? Witness)
{
    /// <summary>Address of its row of the data package, with the places in its sources.</summary>
    public Address Row => TableAddress.Of("sources", Id);
}
