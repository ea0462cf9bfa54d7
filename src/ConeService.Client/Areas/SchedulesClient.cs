using ConeService.Client.Asking;
using ConeService.Contract.Answers;
using ConeService.Contract.Batches;
using ConeService.Contract.Schedules;

namespace ConeService.Client;

/// <summary>Schedules, and programmes fitted from them. Raises <see cref="RefusedException"/> and
/// <see cref="ConeServiceAwayException"/>.</summary>
public interface ISchedulesClient
{
    /// <summary>The schedules.</summary>
    /// <param name="firingKind">Only those of a kind of firing; null: all.</param>
    /// <param name="cancel">Ends the wait.</param>
    Task<Answered<ScheduleList>> ListAsync(string? firingKind = null, CancellationToken cancel = default);

    /// <summary>A schedule with its segments.</summary>
    /// <param name="id">Id of the schedule.</param>
    /// <param name="cancel">Ends the wait.</param>
    Task<Answered<ScheduleDetail>> DescribeAsync(string id, CancellationToken cancel = default);

    /// <summary>A programme for a cone, a kiln and a load.</summary>
    /// <param name="id">Id of the schedule.</param>
    /// <param name="request">Cone, kiln, load, start and tariff; say from when a start is to be chosen, or it is chosen from now
    /// on.</param>
    /// <param name="cancel">Ends the wait.</param>
    Task<Answered<ScheduleFit>> FitAsync(string id, FitRequest request, CancellationToken cancel = default);

    /// <summary>Programmes for one kiln, in the order asked; what is refused carries its problems.</summary>
    /// <param name="request">The kiln, the tariff and 1 to 100 fits.</param>
    /// <param name="cancel">Ends the wait.</param>
    Task<Answered<BatchAnswer<ScheduleFit>>> FitEachAsync(FitBatchRequest request, CancellationToken cancel = default);
}

internal sealed class SchedulesClient(IAnswerer answerer) : ISchedulesClient
{
    public Task<Answered<ScheduleList>> ListAsync(string? firingKind, CancellationToken cancel) => answerer.AskAsync(
        new Question<ScheduleList>(Addresses.Of("/v1/schedules", ("firingKind", firingKind)), (r, _) => r.Schedules.List(firingKind)),
        cancel);

    public Task<Answered<ScheduleDetail>> DescribeAsync(string id, CancellationToken cancel) => answerer.AskAsync(
        new Question<ScheduleDetail>($"/v1/schedules/{Addresses.Part(id)}", (r, _) => r.Schedules.Detail(id)), cancel);

    public Task<Answered<ScheduleFit>> FitAsync(string id, FitRequest request, CancellationToken cancel) => answerer.AskAsync(
        new Question<ScheduleFit>($"/v1/schedules/{Addresses.Part(id)}/fit", (r, now) => r.Schedules.Fit(id, request, now).Answer)
        {
            Check = () => FitCheck.Require(request),
            IsLong = true,
        }.With(request),
        cancel);

    public Task<Answered<BatchAnswer<ScheduleFit>>> FitEachAsync(FitBatchRequest request, CancellationToken cancel) => answerer.AskAsync(
        new Question<BatchAnswer<ScheduleFit>>("/v1/schedules/fit/batch", (r, now) => r.Schedules.FitEach(request, now))
        {
            Check = () => BatchCheck.Require(request.Items),
            IsLong = true,
        }.With(request),
        cancel);
}
