namespace ConeService.Client;

/// <summary>An answer, with who gave it and why.</summary>
/// <typeparam name="T">The answer of the contract.</typeparam>
/// <param name="Value">The answer. It is read from <paramref name="Json"/>, whoever gave it; a word that only a newer service knows is
/// read as a value of its enum that has no name.</param>
/// <param name="Json">The answer as JSON, UTF-8: with members and words that this client does not know.</param>
/// <param name="Origin">Who answered.</param>
/// <param name="Because">Why the service did not; <see cref="AwayReason.None"/> when it did, now or for the cache.</param>
/// <param name="DatasetVersion">Version of the data package that it was answered from.</param>
public sealed record Answered<T>(
    T Value, ReadOnlyMemory<byte> Json, AnswerOrigin Origin, AwayReason Because, string DatasetVersion);

/// <summary>Who answered.</summary>
public enum AnswerOrigin
{
    /// <summary>The service, now.</summary>
    Service,

    /// <summary>The service, a while ago, which it allows to be kept.</summary>
    Cache,

    /// <summary>The data package and the computations of this process.</summary>
    Local,
}

/// <summary>Why the service did not answer.</summary>
public enum AwayReason
{
    /// <summary>It did.</summary>
    None,

    /// <summary>There is none: no address was given.</summary>
    NoAddress,

    /// <summary>It was not reached, or the connection broke while it answered.</summary>
    NotReached,

    /// <summary>It took too long, with all attempts.</summary>
    TimedOut,

    /// <summary>It failed: 5xx.</summary>
    Failed,

    /// <summary>It was asked too often: 429.</summary>
    TooManyRequests,

    /// <summary>It failed so often that it is not asked for a few seconds.</summary>
    CircuitOpen,

    /// <summary>What came is not an answer of this service.</summary>
    Unreadable,
}
