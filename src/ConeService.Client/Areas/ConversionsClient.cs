using ConeService.Client.Asking;
using ConeService.Contract.Answers;
using ConeService.Contract.Conversions;

namespace ConeService.Client;

/// <summary>Conversions between cones and temperatures. Raises <see cref="RefusedException"/> and
/// <see cref="ConeServiceAwayException"/>.</summary>
public interface IConversionsClient
{
    /// <summary>Up to 1,000 conversions; a bad line gets its problems, the good lines their answers.</summary>
    /// <param name="request">The lines.</param>
    /// <param name="cancel">Ends the wait.</param>
    Task<Answered<ConversionAnswer>> ConvertAsync(ConversionRequest request, CancellationToken cancel = default);
}

internal sealed class ConversionsClient(IAnswerer answerer) : IConversionsClient
{
    public Task<Answered<ConversionAnswer>> ConvertAsync(ConversionRequest request, CancellationToken cancel) => answerer.AskAsync(
        new Question<ConversionAnswer>("/v1/conversions", (r, _) => r.Cones.Convert(request))
        {
            Check = () => ConversionCheck.Require(request),
        }.With(request),
        cancel);
}
