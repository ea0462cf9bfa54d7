using ConeService.Contract.Answers;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Contract.Practice;

/// <summary>A caution that an answer raises.</summary>
/// <param name="Id">Id of the caution.</param>
/// <param name="Hazard">The hazard in a few words.</param>
/// <param name="Severity">How bad it can get without control.</param>
/// <param name="Control">What controls it.</param>
/// <param name="Sources">Ids of the sources.</param>
/// <param name="Href">Address of the whole caution.</param>
/// <param name="Student">The row in plain sentences for a student, without ids; null where the data package has none.</param>
public sealed record CautionLink(string Id, string Hazard, Severity Severity, string Control, IReadOnlyList<string> Sources, Address Href,
    Message? Student = null);
