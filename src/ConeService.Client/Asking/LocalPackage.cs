using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing;

namespace ConeService.Client.Asking;

/// <summary>The data package of this process with its overlays. It is opened once, in the background.</summary>
internal sealed class LocalPackage
{
    private readonly Task<OpenedPackage> opening;

    public LocalPackage(DatasetOptions options) => opening = Task.Run(() => Open(options));

    /// <summary>The package, when it is open.</summary>
    /// <exception cref="InvalidPackageException">The package or an overlay is not valid.</exception>
    public Task<OpenedPackage> OpenAsync(CancellationToken cancel) => opening.WaitAsync(cancel);

    private static OpenedPackage Open(DatasetOptions options)
    {
        // The embedded package was held against its rules before it was sealed; whatever else is opened may be anybody's.
        var dataset = string.IsNullOrWhiteSpace(options.Path) && options.Overlays.Count == 0
            ? DatasetLoader.LoadSealed()
            : DatasetLoader.Load(options);
        return new(FiringReference.OpenWithoutStudy(dataset), MessageBook.For(dataset));
    }
}

/// <summary>A package with everything computed from it.</summary>
/// <param name="Reference">The computations.</param>
/// <param name="Messages">The sentences.</param>
internal sealed record OpenedPackage(FiringReference Reference, MessageBook Messages);
