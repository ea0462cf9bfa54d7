using ConeService.Api.Operation;
using Microsoft.Extensions.Options;

namespace ConeService.Api.Http.Reach;

/// <summary>Makes addresses of this service that work for the caller, behind a proxy and a path prefix too.</summary>
internal sealed class ServiceAddress
{
    private readonly string? root;

    /// <summary>Reads the configured address.</summary>
    /// <exception cref="InvalidSettingException">It is no absolute http or https address, or has a query or fragment; or the path is
    /// none, or another than that of the address.</exception>
    public ServiceAddress(IOptions<AddressSettings> settings)
    {
        ConfiguredPrefix = Path(settings.Value.PathBase);
        if (settings.Value.PublicBase is not { Length: > 0 } text) return;
        if (!Uri.TryCreate(text, UriKind.Absolute, out var uri) || uri.Scheme is not ("http" or "https")
            || (uri.Query + uri.Fragment).Length > 0)
        {
            throw new InvalidSettingException(
                $"ConeService:PublicBase must be an http or https address without a query, not “{text}”.");
        }

        root = uri.AbsoluteUri.TrimEnd('/');
        var prefix = uri.AbsolutePath.TrimEnd('/');
        if (ConfiguredPrefix is { } path && path != prefix)
        {
            throw new InvalidSettingException(
                $"ConeService:PathBase is “{path}”, and the path of ConeService:PublicBase “{prefix}”. One of them is enough.");
        }

        ConfiguredPrefix = prefix;
    }

    /// <summary>Path of the configured address, without a slash at its end; empty for the root, null where nothing is configured.</summary>
    public string? ConfiguredPrefix { get; }

    /// <summary>The configured address, without a slash at its end; null where nothing is configured.</summary>
    public string? Configured => root;

    /// <summary>What stands before the paths of this service in a link of a page: empty, or a path such as <c>/cones</c>.</summary>
    public string Prefix(HttpRequest request) => ConfiguredPrefix ?? request.PathBase.ToUriComponent();

    /// <summary>The absolute address of the root, without a slash at its end; empty for a request that names no host.</summary>
    public string Root(HttpRequest request) => root
        ?? (request.Host.HasValue ? $"{request.Scheme}://{request.Host.ToUriComponent()}{Prefix(request)}" : "");

    private static string? Path(string? text)
    {
        if (text is not { Length: > 0 }) return null;
        // A path, and not an address without its scheme.
        if (text[0] == '/' && !text.StartsWith("//", StringComparison.Ordinal) && text.AsSpan().IndexOfAny("?#\\ ") < 0)
            return text.TrimEnd('/');
        throw new InvalidSettingException($"ConeService:PathBase must be a path such as /cones, not “{text}”.");
    }
}
