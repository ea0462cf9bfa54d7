using Microsoft.Extensions.Options;

namespace ConeService.Api.Http;

/// <summary>Makes addresses of this service that work for the caller, behind a proxy and a path prefix too.</summary>
internal sealed class ServiceAddress
{
    private readonly string? root;

    /// <summary>Reads the configured address.</summary>
    /// <exception cref="InvalidOperationException">It is no absolute http or https address, or has a query or fragment.</exception>
    public ServiceAddress(IOptions<AddressSettings> settings)
    {
        if (settings.Value.PublicBase is not { Length: > 0 } text) return;
        if (!Uri.TryCreate(text, UriKind.Absolute, out var uri) || uri.Scheme is not ("http" or "https")
            || (uri.Query + uri.Fragment).Length > 0)
        {
            throw new InvalidOperationException(
                $"ConeService:PublicBase must be an http or https address without a query, not “{text}”.");
        }

        root = uri.AbsoluteUri.TrimEnd('/');
        ConfiguredPrefix = uri.AbsolutePath.TrimEnd('/');
    }

    /// <summary>Path of the configured address, without a slash at its end; empty for the root, null where nothing is configured.</summary>
    public string? ConfiguredPrefix { get; }

    /// <summary>What stands before the paths of this service in a link of a page: empty, or a path such as <c>/cones</c>.</summary>
    public string Prefix(HttpRequest request) => ConfiguredPrefix ?? request.PathBase.ToUriComponent();

    /// <summary>The absolute address of the root, without a slash at its end; empty for a request that names no host.</summary>
    public string Root(HttpRequest request) => root
        ?? (request.Host.HasValue ? $"{request.Scheme}://{request.Host.ToUriComponent()}{request.PathBase.ToUriComponent()}" : "");
}
