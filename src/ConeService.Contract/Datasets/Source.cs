using ConeService.Contract.Answers;

namespace ConeService.Contract.Datasets;

/// <summary>One source of the bibliography.</summary>
/// <param name="Id">Id of the source.</param>
/// <param name="SourceKind">What sort of source it is: chart, paper, standard, textbook, …</param>
/// <param name="Name">The citation.</param>
/// <param name="Year">Year or span of years as far as known; null where none is given.</param>
/// <param name="Locator">Where in the work, or where it was seen.</param>
/// <param name="Rights">Rights as far as known.</param>
/// <param name="Seen">How much was seen: whole, in-part, no (recalled only), not-applicable.</param>
public sealed record Source(string Id, string SourceKind, string Name, string? Year, string? Locator, string Rights, string Seen)
{
    /// <summary>Address of its row of the data package, with the places in its sources.</summary>
    public Address Row => TableAddress.Of("sources", Id);
}
