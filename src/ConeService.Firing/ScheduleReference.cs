using ConeService.Contract.Answers;
using ConeService.Contract.Batches;
using ConeService.Contract.Problems;
using ConeService.Contract.Schedules;
using ConeService.Contract.Texts;
using ConeService.Firing.Cones;
using ConeService.Firing.Schedules;
using ConeService.Firing.Schedules.Fitting;

namespace ConeService.Firing;

/// <summary>Schedules as they are handed on, and programmes fitted from them to a cone, a kiln and a load.</summary>
public sealed class ScheduleReference
{
    private readonly ScheduleCatalogue catalogue;
    private readonly ConeCharts charts;
    private readonly ScheduleFitter fitter;
    private readonly ScheduleDescriber describer;

    internal ScheduleReference(ScheduleCatalogue catalogue, ConeCharts charts, ScheduleFitter fitter)
    {
        (this.catalogue, this.charts, this.fitter) = (catalogue, charts, fitter);
        describer = new(catalogue, charts);
    }

    /// <summary>The schedules.</summary>
    /// <param name="kind">Only those of a kind of firing; null: all.</param>
    /// <param name="cone">Only those that can be fitted to a cone; null: all.</param>
    /// <param name="atmosphere">Only those whose ware matures in an atmosphere; null: all.</param>
    /// <exception cref="RefusedException">A filter can't be read; carries every finding.</exception>
    public ScheduleList List(string? kind = null, string? cone = null, string? atmosphere = null) =>
        describer.List(ScheduleFilter.Read(charts.Scale, kind, cone, atmosphere));

    /// <summary>A schedule with its segments.</summary>
    /// <param name="id">Id of the schedule.</param>
    /// <param name="units">C or F, for the segments in words; null: C.</param>
    /// <exception cref="RefusedException">There is none of that id, or the units are no units.</exception>
    public ScheduleDetail Detail(string id, string? units = null)
    {
        var together = new Together();
        var found = together.Try(() => catalogue.Find(id));
        if (units is not (null or "C" or "F"))
        {
            together.Findings.Add(new(
                FindingCodes.UnitsUnknown, "units", units,
                Message.Of("schedules.units-unknown", ("sent", units)), Message.Verbatim(["C", "F"])));
        }

        together.Done();
        return describer.Detail(found!, units);
    }

    /// <summary>Fits a schedule.</summary>
    /// <param name="id">Id of the schedule.</param>
    /// <param name="request">Cone, kiln, load, start and tariff.</param>
    /// <param name="now">Now: what a start is chosen from when the request does not say, which is then said in assumed. There is no clock
    /// here; null: a start can be chosen only by a request that says from when.</param>
    /// <exception cref="RefusedException">Something can't be answered; carries every finding.</exception>
    public FittedSchedule Fit(string id, FitRequest request, DateTimeOffset? now = null)
    {
        var together = new Together();
        var found = together.Try(() => catalogue.Find(id));
        together.Try(() => FitCheck.Require(request));
        if (together.Any && found is not null) together.Try(() => fitter.Check(found, Judged(request), now));
        together.Done();
        var fit = fitter.Fit(found!, request, now);
        return new(fit.Answer, fit.Curve.ToCurve(), fit.Programme.ToCurve());
    }

    /// <summary>Fits several schedules for one kiln, in the order asked; what is refused carries its problems.</summary>
    /// <param name="request">The fits.</param>
    /// <param name="now">Now, as for one fit.</param>
    /// <exception cref="RefusedException">There are no fits, or too many, or the units are no units.</exception>
    public BatchAnswer<ScheduleFit> FitEach(FitBatchRequest request, DateTimeOffset? now = null)
    {
        BatchCheck.Require(request.Items);
        var units = new RequestCheck();
        units.Units(request.Units);
        if (units.Findings.Count > 0)
        {
            // What stands once for all is told once, with what is wrong with each.
            var judged = request with { Units = RequestCheck.Judged(request.Units) };
            var each = Batch.Answer(
                charts.Dataset.VersionId, judged.Items!, item => Checked(Named(item.Schedule), item.Alone(judged), now),
                "units", "kiln", "tariff");
            throw new RefusedException([.. units.Findings, .. each.Items.SelectMany(i => i.Problems).DistinctBy(f => (f.Code, f.Field))]);
        }

        return Batch.Answer(
            charts.Dataset.VersionId, request.Items!, item => Fit(Named(item.Schedule), item.Alone(request), now).Answer,
            "units", "kiln", "tariff");
    }

    private static FitRequest Judged(FitRequest request) =>
        request.Units is "C" or "F" ? request : request with { Units = RequestCheck.Judged(request.Units) };

    private FitRequest Checked(string id, FitRequest request, DateTimeOffset? now)
    {
        var (found, together) = (catalogue.Find(id), new Together());
        together.Try(() => FitCheck.Require(request));
        together.Try(() => fitter.Check(found, request, now));
        together.Done();
        return request;
    }

    private static string Named(string? schedule) => !string.IsNullOrWhiteSpace(schedule)
        ? schedule
        : throw new RefusedException(new Finding(
            FindingCodes.MemberMissing, "/schedule", null, Message.Of("members.member-missing", ("member", "schedule")),
            Message.Verbatim(["mid-range-glaze"])));
}
