using ConeService.Client.Asking;
using ConeService.Client.Reading;
using ConeService.Contract.Answers;
using ConeService.Contract.Plans;

namespace ConeService.Client;

/// <summary>Which firings run when, with which pieces? Raises <see cref="RefusedException"/> and
/// <see cref="ConeServiceAwayException"/>: plans are made by the service only, since the solver is no part of this package.</summary>
public interface IPlansClient
{
    /// <summary>A plan of firings for a backlog, kilns and a calendar. Nothing is stored: send the firings of a plan back to plan on. The
    /// wait is the longest of all questions: an attempt may take <see cref="ConeClientOptions.LongAttemptTimeout"/> and
    /// <paramref name="seconds"/>.</summary>
    /// <param name="request">The horizon, 1 to 20 kilns and 1 to 5,000 pieces. What needs neither the data nor a time zone to be refused is
    /// not sent.</param>
    /// <param name="seconds">How long the plan may be searched for, s, 0.5 to 30; it comes sooner where nothing is left to better. Null:
    /// 5.</param>
    /// <param name="cancel">Ends the wait, and with it the search.</param>
    Task<Answered<FiringPlan>> PlanAsync(PlanRequest request, double? seconds = null, CancellationToken cancel = default);
}

internal sealed class PlansClient(IAnswerer answerer) : IPlansClient
{
    public async Task<Answered<FiringPlan>> PlanAsync(PlanRequest request, double? seconds, CancellationToken cancel)
    {
        var (sent, search) = (LogSettings.Text(seconds), 0.0);
        // Before it is written as JSON, which has no word for what is no number.
        Refusals.Require(() =>
        {
            search = PlanCheck.Seconds(sent);
            PlanCheck.Require(request);
        });
        var question = new Question<FiringPlan>(Addresses.Of("/v1/plans", ("seconds", sent)), Local: null)
        {
            Search = TimeSpan.FromSeconds(search),
        };
        try
        {
            return await answerer.AskAsync(question.With(request), cancel);
        }
        catch (ConeServiceAwayException away) when (away is not RouteMissingException && Refusals.MayBeAnsweredLocally(away))
        {
            throw new ConeServiceAwayException(away.Because, $"{away.Message} Plans are made by the service only.", away);
        }
    }
}
