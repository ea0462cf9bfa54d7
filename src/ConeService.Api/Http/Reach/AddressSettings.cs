namespace ConeService.Api.Http.Reach;

/// <summary>Under which address callers reach the service: section <c>ConeService</c> of the configuration.</summary>
internal sealed class AddressSettings
{
    /// <summary>
    /// The address of the root as callers see it, such as <c>https://studio.example/cones</c>; null: as each request names it. A proxy may
    /// keep its path or strip it.
    /// </summary>
    public string? PublicBase { get; set; }

    /// <summary>Only the path before every address, such as <c>/cones</c>, for a service that is reached by more than one host.</summary>
    public string? PathBase { get; set; }

    /// <summary>Addresses or networks of the proxies whose <c>X-Forwarded-…</c> headers are believed; empty: nobody's are.</summary>
    public IList<string> Proxies { get; } = [];
}
