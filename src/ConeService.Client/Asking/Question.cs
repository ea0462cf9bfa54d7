using System.Text.Json;
using System.Text.Json.Serialization;
using ConeService.Client.Reading;
using ConeService.Contract.Answers;
using ConeService.Contract.Json;
using ConeService.Firing;

namespace ConeService.Client.Asking;

/// <summary>A question, as it is sent and as it is answered here.</summary>
/// <typeparam name="T">The answer.</typeparam>
/// <param name="Address">Path and query from the root of the service.</param>
/// <param name="Local">The same question to the computations of this process, and the time of asking; null: the service alone can
/// answer.</param>
internal sealed record Question<T>(string Address, Func<FiringReference, DateTimeOffset, Task<T>>? Local)
{
    private const string Json = "application/json";
    private const string Csv = "text/csv";

    private static readonly JsonSerializerOptions Sent =
        new(ConeJson.Options) { DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull };

    /// <summary>A question that is answered here without reading anything.</summary>
    /// <param name="address">Path and query from the root of the service.</param>
    /// <param name="local">The same question to the computations of this process, and the time of asking.</param>
    public Question(string address, Func<FiringReference, DateTimeOffset, T> local)
        : this(address, (reference, now) => Task.FromResult(local(reference, now)))
    {
    }

    /// <summary>The body; null: a GET.</summary>
    public byte[]? Body { get; private init; }

    /// <summary>The media type of the body.</summary>
    public string MediaType { get; private init; } = Json;

    /// <summary>Refuses what needs no data to be refused.</summary>
    public Action? Check { private get; init; }

    /// <summary>Whether much is computed.</summary>
    public bool IsLong { get; init; }

    /// <summary>How long the service is asked to search, which every attempt waits for beyond what it may take anyway; null: it is not
    /// asked to search.</summary>
    public TimeSpan? Search { get; init; }

    /// <summary>Whether only the data that the service uses may answer in its place.</summary>
    public bool NeedsSamePackage { get; init; }

    /// <summary>Method and path, for sentences.</summary>
    public string Route => $"{(Body is null ? "GET" : "POST")} {Address.Split('?')[0]}";

    /// <summary>Refuses what needs no data to be refused, as the service would.</summary>
    /// <exception cref="RefusedException">Carries every finding that needs no data.</exception>
    public void Require()
    {
        if (Check is not null) Refusals.Require(Check);
    }

    /// <summary>A question with a log as its body.</summary>
    public Question<T> With(ReadOnlyMemory<byte> log) => this with { Body = log.ToArray(), MediaType = Csv };

    /// <summary>A question with a body.</summary>
    public Question<T> With<TBody>(TBody body) =>
        this with { Body = JsonSerializer.SerializeToUtf8Bytes(body, Sent.GetTypeInfo(typeof(TBody))) };
}
