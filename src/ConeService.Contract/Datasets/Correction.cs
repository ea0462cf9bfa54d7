using ConeService.Data;

namespace ConeService.Contract.Datasets;

/// <summary>A value adopted against the print. Applied last; an unmatched correction refuses the package.</summary>
/// <param name="Table">The table corrected.</param>
/// <param name="Key">Primary key of the row, its parts separated by a slash.</param>
/// <param name="Field">The field corrected.</param>
/// <param name="Printed">The value as it stands in the table.</param>
/// <param name="Adopted">The value used instead.</param>
/// <param name="Reason">Why.</param>
/// <param name="Evidence">What shows it.</param>
/// <param name="Sources">Ids of the sources of the evidence.</param>
/// <param name="Confidence">How far the correction can be trusted.</param>
public sealed record Correction(string Table, string Key, string Field, string Printed, string Adopted, string Reason, string Evidence,
    IReadOnlyList<string> Sources, Confidence Confidence);
