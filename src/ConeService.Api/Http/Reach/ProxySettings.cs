using System.Net;
using ConeService.Api.Operation;
using Microsoft.AspNetCore.HttpOverrides;

namespace ConeService.Api.Http.Reach;

/// <summary>
/// Whom the service believes what it says of a caller: <c>ConeService:Proxies</c>, addresses or networks. From anybody else
/// <c>X-Forwarded-…</c> headers are only text.
/// </summary>
internal static class ProxySettings
{
    /// <summary>The proxies that were named; null when none is, and no forwarded header is read.</summary>
    /// <exception cref="InvalidSettingException">One is neither an address nor a network.</exception>
    public static ForwardedHeadersOptions? Read(AddressSettings settings)
    {
        if (settings.Proxies.Count == 0) return null;
        var options = new ForwardedHeadersOptions
        {
            ForwardedHeaders = ForwardedHeaders.All,
            // From one named proxy to the next, until one is met that is not named.
            ForwardLimit = null,
        };
        options.KnownProxies.Clear();
        options.KnownIPNetworks.Clear();
        foreach (var (index, text) in settings.Proxies.Index())
        {
            if (IPAddress.TryParse(text, out var address)) options.KnownProxies.Add(address);
            else if (System.Net.IPNetwork.TryParse(text, out var network)) options.KnownIPNetworks.Add(network);
            else
            {
                throw new InvalidSettingException(
                    $"ConeService:Proxies:{index} is “{text}”, which is neither an address (10.0.0.7) nor a network (10.0.0.0/8).");
            }
        }

        return options;
    }
}
