namespace ConeService.Data;

/// <summary>A package that lies where the one in use came from, is another, and is not used.</summary>
/// <param name="Standing">Whether it may still be taken by itself.</param>
/// <param name="Since">When it was first seen.</param>
/// <param name="Reason">Why it is not used, in English; names files of the package and no path of the machine.</param>
public sealed record WaitingPackage(PackageStanding Standing, DateTimeOffset Since, string Reason)
{
    private const int Shown = 3;

    /// <summary>What may be told of a failure to whoever asks: of faults the first few.</summary>
    internal static string Why(Exception failure)
    {
        if (failure is not InvalidPackageException { Faults: var faults })
            return "nothing can be built from it; the log says more";
        // What the system says of a file that it does not read names the path.
        var told = faults.Take(Shown).Select(f => f.Rule == FaultRules.UnreadableFile
            ? $"{(f.File == "." ? "the package" : f.File)} cannot be read (rule {f.Rule})"
            : f.ToString());
        var more = faults.Count > Shown ? FormattableString.Invariant($" … and {faults.Count - Shown} more") : "";
        return string.Join(" · ", told) + more;
    }
}

/// <summary>How a package stands that is not used.</summary>
public enum PackageStanding
{
    /// <summary>It is still being written, or its datapackage.json does not say yet that it is another.</summary>
    Pending,

    /// <summary>It was read and is not valid. It is read again when it changes.</summary>
    Refused,
}
