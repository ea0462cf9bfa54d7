using System.Reflection;
using ConeService.Client.Asking;
using ConeService.Contract.Datasets;

namespace ConeService.Client;

/// <summary>The data package itself. Raises <see cref="ConeServiceAwayException"/>.</summary>
public interface IDatasetClient
{
    /// <summary>Version, checksums and change log of the data package, and the version of the code that answers.</summary>
    /// <param name="cancel">Ends the wait.</param>
    Task<Answered<DatasetDescription>> DescribeAsync(CancellationToken cancel = default);
}

internal sealed class DatasetClient(IAnswerer answerer) : IDatasetClient
{
    private static readonly string[] Build =
        (typeof(DatasetClient).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion ?? "")
        .Split('+', 2);

    /// <summary>The question.</summary>
    public static Question<DatasetDescription> Description { get; } = new("/v1/dataset", static (r, _) =>
        r.Package.Describe() with { CodeVersion = Build[0], CodeCommit = Build.Length > 1 ? Build[1] : null });

    public Task<Answered<DatasetDescription>> DescribeAsync(CancellationToken cancel) => answerer.AskAsync(Description, cancel);
}
