using System.Globalization;
using System.Text;

namespace ConeService.Data;

/// <summary>One thing that is wrong with a data package, and where.</summary>
/// <param name="Package">Name of the package, or where it was looked for while its name is not known.</param>
/// <param name="File">File name inside the package; <c>.</c> when the package itself cannot be listed.</param>
/// <param name="Line">Physical line in the file, the header being line 1; null when the fault is not in one line.</param>
/// <param name="Field">Field of the table, or place in datapackage.json; null when the whole row or file is meant.</param>
/// <param name="Rule">Stable id of the rule broken, one of <see cref="FaultRules"/>.</param>
/// <param name="Reason">The value found and what is allowed.</param>
public sealed record PackageFault(string Package, string File, int? Line, string? Field, string Rule, string Reason)
{
    /// <summary>For people: <c>end-points.csv line 12, field celsius: … (rule end-point-rises-with-rate)</c>.</summary>
    public override string ToString()
    {
        var text = new StringBuilder(File);
        if (Line is { } line)
            text.Append(CultureInfo.InvariantCulture, $" line {line}");
        if (Field is not null)
            text.Append(CultureInfo.InvariantCulture, $", field {Field}");
        return text.Append(CultureInfo.InvariantCulture, $": {Reason} (rule {Rule})").ToString();
    }
}
