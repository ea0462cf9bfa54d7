using ConeService.Client.Asking;
using ConeService.Contract.Answers;
using ConeService.Contract.Batches;
using ConeService.Contract.Loads;

namespace ConeService.Client;

/// <summary>Will this load survive? Raises <see cref="RefusedException"/> and <see cref="ConeServiceAwayException"/>: what decides a load
/// may be a studio's own clay, so local data answers only when the service said earlier that it uses the same.</summary>
public interface ILoadsClient
{
    /// <summary>A verdict for each piece and for the load, with reasons that can be shown to a student.</summary>
    /// <param name="request">A kiln, a firing and up to 2,000 pieces.</param>
    /// <param name="detail">full, or verdicts for a light answer; null: full.</param>
    /// <param name="cancel">Ends the wait.</param>
    Task<Answered<LoadAnswer>> CheckAsync(LoadRequest request, string? detail = null, CancellationToken cancel = default);

    /// <summary>Do this clay, this glaze and this firing go together?</summary>
    /// <param name="request">The clay, the coats and the firing.</param>
    /// <param name="cancel">Ends the wait.</param>
    Task<Answered<PairingAnswer>> CheckPairingAsync(PairingRequest request, CancellationToken cancel = default);

    /// <summary>A verdict for each of several loads, in the order asked; what is refused carries its problems.</summary>
    /// <param name="request">1 to 50 loads.</param>
    /// <param name="detail">full, or verdicts for a light answer; null: full.</param>
    /// <param name="cancel">Ends the wait.</param>
    Task<Answered<BatchAnswer<LoadAnswer>>> CheckEachAsync(
        LoadBatchRequest request, string? detail = null, CancellationToken cancel = default);

    /// <summary>A verdict for each of several pairings, in the order asked; what is refused carries its problems.</summary>
    /// <param name="request">1 to 100 pairings.</param>
    /// <param name="cancel">Ends the wait.</param>
    Task<Answered<BatchAnswer<PairingAnswer>>> CheckEachPairingAsync(PairingBatchRequest request, CancellationToken cancel = default);
}

internal sealed class LoadsClient(IAnswerer answerer) : ILoadsClient
{
    public Task<Answered<LoadAnswer>> CheckAsync(LoadRequest request, string? detail, CancellationToken cancel) => answerer.AskAsync(
        new Question<LoadAnswer>(Addresses.Of("/v1/loads/check", ("detail", detail)), (r, _) => r.Loads.Check(request, detail))
        {
            NeedsSamePackage = true,
        }.With(request),
        cancel);

    public Task<Answered<PairingAnswer>> CheckPairingAsync(PairingRequest request, CancellationToken cancel) => answerer.AskAsync(
        new Question<PairingAnswer>("/v1/pairings/check", (r, _) => r.Loads.Check(request))
        {
            NeedsSamePackage = true,
        }.With(request),
        cancel);

    public Task<Answered<BatchAnswer<LoadAnswer>>> CheckEachAsync(LoadBatchRequest request, string? detail, CancellationToken cancel) =>
        answerer.AskAsync(
            new Question<BatchAnswer<LoadAnswer>>(
                Addresses.Of("/v1/loads/check/batch", ("detail", detail)), (r, _) => r.Loads.CheckEach(request, detail))
            {
                Check = () => BatchCheck.Require(request.Items, LoadLimits.MostLoads),
                IsLong = true,
                NeedsSamePackage = true,
            }.With(request),
            cancel);

    public Task<Answered<BatchAnswer<PairingAnswer>>> CheckEachPairingAsync(PairingBatchRequest request, CancellationToken cancel) =>
        answerer.AskAsync(
            new Question<BatchAnswer<PairingAnswer>>("/v1/pairings/check/batch", (r, _) => r.Loads.CheckEach(request))
            {
                Check = () => BatchCheck.Require(request.Items),
                IsLong = true,
                NeedsSamePackage = true,
            }.With(request),
            cancel);
}
