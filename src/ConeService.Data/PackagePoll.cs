namespace ConeService.Data;

/// <summary>
/// Decides when packages on disk are read again: when their datapackage.json is another than that in use and nothing was written for
/// one look, or when the writing took longer than <see cref="Patience"/>. Looks by path and content at intervals, since events of a
/// file system are lost with a renamed directory, a turned link and a mount.
/// </summary>
/// <param name="paths">Directories and archives; none of them need be there.</param>
/// <param name="inUse">How they looked just before the package in use was read.</param>
internal sealed class PackagePoll(IReadOnlyList<string> paths, PackageStamp inUse)
{
    /// <summary>How long a writer can put off that a package is read.</summary>
    public static readonly TimeSpan Patience = TimeSpan.FromSeconds(20);

    /// <summary>How long after a refusal what looks the same is read again: rights and mounts heal without a trace.</summary>
    public static readonly TimeSpan Again = TimeSpan.FromMinutes(1);

    private PackageStamp _inUse = inUse;
    private PackageStamp _seen = inUse;
    private PackageStamp? _tried;
    private DateTimeOffset _triedAt;

    /// <summary>When what is there was first seen to differ from what is in use; null while it does not.</summary>
    public DateTimeOffset? Since { get; private set; }

    /// <summary>What is to be done now.</summary>
    /// <returns>What to do, and how the packages look.</returns>
    public (PollResult Result, PackageStamp Stamp) Look(DateTimeOffset now)
    {
        var stamp = PackageStamp.Of(paths);
        var isQuiet = stamp == _seen;
        _seen = stamp;
        if (stamp == _inUse)
        {
            (Since, _tried) = (null, null);
            return (PollResult.InUse, stamp);
        }

        Since ??= now;
        var wasTried = stamp == _tried && now - _triedAt < Again;
        if (!isQuiet && now - Since < Patience)
            return (PollResult.BeingWritten, stamp);
        if (wasTried)
            return (PollResult.Nothing, stamp);
        (_tried, _triedAt) = (stamp, now);
        return (stamp.Descriptors == _inUse.Descriptors ? PollResult.FilesChanged : PollResult.Read, stamp);
    }

    /// <summary>These are in use now, or are what is in use.</summary>
    public void Use(PackageStamp stamp) => (_inUse, Since, _tried) = (stamp, null, null);
}

/// <summary>What a look at the packages says.</summary>
internal enum PollResult
{
    /// <summary>They are those in use.</summary>
    InUse,

    /// <summary>They are others, and somebody still writes.</summary>
    BeingWritten,

    /// <summary>They are others and can be read.</summary>
    Read,

    /// <summary>Files look otherwise, and no datapackage.json does.</summary>
    FilesChanged,

    /// <summary>They were tried already and are as they were then.</summary>
    Nothing,
}
