using System.Net;
using System.Net.Http.Headers;
using System.Text.Json;
using ConeService.Client.Reading;
using Polly.CircuitBreaker;
using Polly.Timeout;

namespace ConeService.Client.Asking;

/// <summary>Asks the service.</summary>
/// <param name="clients">Makes the clients, which retry, time out and break.</param>
/// <param name="cache">What the service allows to be kept.</param>
internal sealed class ServiceAnswerer(IHttpClientFactory clients, AnswerCache cache) : IAnswerer
{
    /// <summary>Name of the client for most questions.</summary>
    public const string ShortClient = "ConeService";

    /// <summary>Name of the client for questions about which much is computed.</summary>
    public const string LongClient = "ConeService.Long";

    /// <summary>Name of the client for questions that say how long the service may search: where all its searches are taken, what else
    /// it computes goes on.</summary>
    public const string SearchClient = "ConeService.Search";

    /// <summary>How long the service was asked to search.</summary>
    public static readonly HttpRequestOptionsKey<TimeSpan> Search = new("ConeService.Search");

    public async Task<Answered<T>> AskAsync<T>(Question<T> question, CancellationToken cancel)
    {
        question.Require();
        if (question.Body is null && cache.Find(question.Address) is { } kept) return Read<T>(kept, AnswerOrigin.Cache);
        using var response = await SendAsync(question, cancel);
        var body = await response.Content.ReadAsByteArrayAsync(cancel);
        switch ((int)response.StatusCode)
        {
            case >= 200 and < 300:
                var answer = Read<T>(body, AnswerOrigin.Service);
                if (question.Body is null) cache.Keep(question.Address, body, response.Headers.CacheControl);
                return answer;
            case >= 400 and < 500:
                throw Refusals.Read(body, response.StatusCode, question.Route);
            default:
                throw new ConeServiceAwayException(
                    AwayReason.Unreadable, $"The service answered {question.Route} with status {(int)response.StatusCode}.");
        }
    }

    private static Answered<T> Read<T>(byte[] body, AnswerOrigin origin)
    {
        try
        {
            return new(AnswerReader.Read<T>(body), body, origin, AwayReason.None, AnswerReader.DatasetVersion(body)!);
        }
        catch (Exception failure) when (failure is JsonException or InvalidOperationException or FormatException or ArgumentException)
        {
            throw new ConeServiceAwayException(
                AwayReason.Unreadable, $"What came is no answer of this service: {failure.Message}", failure);
        }
    }

    private async Task<HttpResponseMessage> SendAsync<T>(Question<T> question, CancellationToken cancel)
    {
        // Disposing it would end nothing: the factory keeps the handlers.
        var client = clients.CreateClient(
            question.Search is not null ? SearchClient : question.IsLong ? LongClient : ShortClient);
        // Joined to a root with a path of its own, an address that begins with a slash would lose that path.
        using var request = new HttpRequestMessage(
            question.Body is null ? HttpMethod.Get : HttpMethod.Post, new Uri(question.Address.TrimStart('/'), UriKind.Relative));
        if (question.Search is { } search) request.Options.Set(Search, search);
        request.Headers.Accept.ParseAdd("application/json");
        if (question.Body is not null)
        {
            request.Content = new ByteArrayContent(question.Body);
            request.Content.Headers.ContentType = new MediaTypeHeaderValue(question.MediaType);
        }

        try
        {
            var response = await client.SendAsync(request, cancel);
            if (Away(response.StatusCode) is not { } because) return response;
            response.Dispose();
            throw new ConeServiceAwayException(because, $"The service answered {question.Route} with status {(int)response.StatusCode}.");
        }
        catch (HttpRequestException failure)
        {
            throw new ConeServiceAwayException(
                failure.HttpRequestError == HttpRequestError.InvalidResponse ? AwayReason.Unreadable : AwayReason.NotReached,
                $"The service was not reached, or did not answer whole: {failure.Message}", failure);
        }
        catch (BrokenCircuitException failure)
        {
            throw new ConeServiceAwayException(
                AwayReason.CircuitOpen, "The service failed so often that it is not asked for a few seconds.", failure);
        }
        catch (Exception failure)
            when (failure is TimeoutRejectedException or OperationCanceledException && !cancel.IsCancellationRequested)
        {
            throw new ConeServiceAwayException(AwayReason.TimedOut, $"The service did not answer {question.Route} in time.", failure);
        }
    }

    private static AwayReason? Away(HttpStatusCode status) => status switch
    {
        HttpStatusCode.RequestTimeout => AwayReason.TimedOut,
        HttpStatusCode.TooManyRequests => AwayReason.TooManyRequests,
        >= HttpStatusCode.InternalServerError => AwayReason.Failed,
        _ => null,
    };
}
