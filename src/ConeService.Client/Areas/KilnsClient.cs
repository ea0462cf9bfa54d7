using ConeService.Client.Asking;
using ConeService.Contract.Answers;
using ConeService.Contract.Kilns;

namespace ConeService.Client;

/// <summary>What firings tell of their kiln. Raises <see cref="RefusedException"/> and <see cref="ConeServiceAwayException"/>.</summary>
public interface IKilnsClient
{
    /// <summary>Wall, leak, power and the offset of the thermocouple from logs, and what changes from firing to firing.</summary>
    /// <param name="request">The kiln and up to 30 of its firings, in the order of time.</param>
    /// <param name="cancel">Ends the wait.</param>
    Task<Answered<CalibrateAnswer>> CalibrateAsync(CalibrateRequest request, CancellationToken cancel = default);
}

internal sealed class KilnsClient(IAnswerer answerer) : IKilnsClient
{
    public Task<Answered<CalibrateAnswer>> CalibrateAsync(CalibrateRequest request, CancellationToken cancel) => answerer.AskAsync(
        new Question<CalibrateAnswer>("/v1/kilns/calibrate", (r, _) => r.Kilns.Calibrate(request, cancel))
        {
            Check = () => CalibrateCheck.Require(request),
            IsLong = true,
        }.With(request),
        cancel);
}
