using ConeService.Client.Asking;
using ConeService.Contract.Answers;
using ConeService.Contract.HeatWork;

namespace ConeService.Client;

/// <summary>What firings did to the cones, and what puts one down. Raises <see cref="RefusedException"/> and
/// <see cref="ConeServiceAwayException"/>.</summary>
public interface IHeatWorkClient
{
    /// <summary>What a programme or a log did to the cones.</summary>
    /// <param name="request">The programme or the log; temperatures in the request's units.</param>
    /// <param name="cancel">Ends the wait.</param>
    Task<Answered<HeatWorkAnswer>> FollowAsync(HeatWorkRequest request, CancellationToken cancel = default);

    /// <summary>Which peak, hold or rate puts a cone just down.</summary>
    /// <param name="request">The programme, the cone and what is asked for.</param>
    /// <param name="cancel">Ends the wait.</param>
    Task<Answered<SolveAnswer>> SolveAsync(SolveRequest request, CancellationToken cancel = default);

    /// <summary>How far the meter is off, by witness cones.</summary>
    /// <param name="request">The firings with their witness cones.</param>
    /// <param name="cancel">Ends the wait.</param>
    Task<Answered<CompareAnswer>> CompareAsync(CompareRequest request, CancellationToken cancel = default);
}

internal sealed class HeatWorkClient(IAnswerer answerer) : IHeatWorkClient
{
    public Task<Answered<HeatWorkAnswer>> FollowAsync(HeatWorkRequest request, CancellationToken cancel) => answerer.AskAsync(
        new Question<HeatWorkAnswer>("/v1/heat-work", (r, _) => r.HeatWork.Follow(request).Answer)
        {
            Check = () => HeatWorkCheck.Require(request),
            IsLong = true,
        }.With(request),
        cancel);

    public Task<Answered<SolveAnswer>> SolveAsync(SolveRequest request, CancellationToken cancel) => answerer.AskAsync(
        new Question<SolveAnswer>("/v1/heat-work/solve", (r, _) => r.HeatWork.Solve(request).Answer)
        {
            Check = () => HeatWorkCheck.Require(request),
            IsLong = true,
        }.With(request),
        cancel);

    public Task<Answered<CompareAnswer>> CompareAsync(CompareRequest request, CancellationToken cancel) => answerer.AskAsync(
        new Question<CompareAnswer>("/v1/heat-work/compare", (r, _) => r.HeatWork.Compare(request).Answer)
        {
            Check = () => HeatWorkCheck.Require(request),
            IsLong = true,
        }.With(request),
        cancel);
}
