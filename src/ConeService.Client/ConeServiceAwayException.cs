namespace ConeService.Client;

/// <summary>The service did not answer, and the data of this process could not answer for it.</summary>
public class ConeServiceAwayException : Exception
{
    /// <summary>Says why.</summary>
    /// <param name="because">Why the service did not answer.</param>
    /// <param name="message">The same in words, and why the data of this process did not answer.</param>
    /// <param name="cause">What was caught.</param>
    public ConeServiceAwayException(AwayReason because, string message, Exception? cause = null)
        : base(message, cause) => Because = because;

    /// <summary>Why the service did not answer.</summary>
    public AwayReason Because { get; }
}

/// <summary>The service answered, and does not know the address: it is older than this client.</summary>
public sealed class RouteMissingException : ConeServiceAwayException
{
    /// <summary>Names the address.</summary>
    /// <param name="route">Method and path.</param>
    public RouteMissingException(string route)
        : base(AwayReason.Unreadable, $"The service has no {route}. It is older than this client, or its address is not the root of it.") =>
        Route = route;

    /// <summary>Method and path that the service lacks.</summary>
    public string Route { get; }
}
