using System.Text.Json;
using ConeService.Client.Reading;

namespace ConeService.Client.Asking;

/// <summary>
/// Lets only whole answers pass. It stands inside the retries: what breaks off in the middle or is no JSON of this service is asked for
/// again, like what never came.
/// </summary>
internal sealed class WholeAnswerHandler : DelegatingHandler
{
    // The longest answer of the service, of a load of 2,000 pieces, is 6 MB.
    private const int MostBytes = 64 * 1024 * 1024;

    /// <inheritdoc/>
    protected override async Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, CancellationToken cancellationToken)
    {
        var response = await base.SendAsync(request, cancellationToken);
        try
        {
            await response.Content.LoadIntoBufferAsync(MostBytes, cancellationToken);
            if (response.IsSuccessStatusCode && !IsAnswer(await response.Content.ReadAsByteArrayAsync(cancellationToken)))
                throw new HttpRequestException(HttpRequestError.InvalidResponse, "what came is no answer of this service.");
            return response;
        }
        catch (IOException broken)
        {
            response.Dispose();
            throw new HttpRequestException(HttpRequestError.ResponseEnded, broken.Message, broken);
        }
        catch
        {
            response.Dispose();
            throw;
        }
    }

    private static bool IsAnswer(byte[] body)
    {
        try
        {
            return AnswerReader.DatasetVersion(body) is not null;
        }
        catch (JsonException)
        {
            return false;
        }
    }
}
