namespace ConeService.Data;

/// <summary>Stable ids of what is told of a valid package for its maker to look at.</summary>
public static class PackageWarnings
{
    /// <summary>No cone of a table of an overlay has a leading zero, although some could have lost theirs.</summary>
    public const string LostZeros = "lost-zeros";
}
