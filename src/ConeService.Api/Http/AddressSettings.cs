namespace ConeService.Api.Http;

/// <summary>Under which address callers reach the service: section <c>ConeService</c> of the configuration.</summary>
internal sealed class AddressSettings
{
    /// <summary>
    /// The address of the root as callers see it, such as <c>https://studio.example/cones</c>; null: as each request names it. A proxy may
    /// keep its path or strip it.
    /// </summary>
    public string? PublicBase { get; set; }
}
