using System.Globalization;
using System.Text;

namespace ConeService.Data;

/// <summary>A data package breaks rules and is not used.</summary>
public sealed class InvalidPackageException : Exception
{
    private const int Shown = 50;

    /// <summary>Tells all the faults of a package.</summary>
    /// <param name="faults">Every fault found, at least one.</param>
    public InvalidPackageException(IReadOnlyList<PackageFault> faults)
        : base(Describe(faults)) => Faults = faults;

    /// <summary>Every fault found; the message shows the first fifty.</summary>
    public IReadOnlyList<PackageFault> Faults { get; }

    private static string Describe(IReadOnlyList<PackageFault> faults)
    {
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture,
            $"The data package is not valid ({faults.Count} {(faults.Count == 1 ? "fault" : "faults")}):");
        foreach (var fault in faults.Take(Shown))
            text.Append(CultureInfo.InvariantCulture, $"\n{fault.Package}: {fault}");
        if (faults.Count > Shown)
            text.Append(CultureInfo.InvariantCulture, $"\n… and {faults.Count - Shown} more");
        return text.ToString();
    }
}
