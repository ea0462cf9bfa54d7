using ConeService.Firing;

namespace ConeService.Api.Features.Posters;

/// <summary>Every poster and hand-out.</summary>
internal static class PosterKinds
{
    private const string Process = "process-";

    /// <summary>Those that stand by themselves: name, and what it is for.</summary>
    public static readonly (string Name, string Tells, Func<FiringReference, Poster> Make)[] All =
    [
        ("chart", "Wall chart: every cone, hottest first", ChartPoster.Of),
        ("cautions", "Kiln-room cautions, two sheets", CautionPoster.Of),
        ("before-you-load", "Read this before you load", LoadPoster.Of),
        ("cones", "Class hand-out on cones, two sides", ConeHandout.Of),
    ];

    /// <summary>Names of all, with one for each process.</summary>
    public static IEnumerable<(string Name, string Tells)> Names(FiringReference reference) =>
    [
        .. All.Select(p => (p.Name, p.Tells)),
        .. reference.Practice.Processes().Items.Select(p => (Process + p.Id, p.Name)),
    ];

    /// <summary>The poster; null where there is none of that name.</summary>
    /// <exception cref="Contract.Answers.RefusedException">Its name is that of a process that is not there.</exception>
    public static Poster? Make(FiringReference reference, string name) => name.StartsWith(Process, StringComparison.Ordinal)
        ? ProcessPoster.Of(reference, name[Process.Length..])
        : Array.Find(All, p => p.Name == name).Make?.Invoke(reference);
}
