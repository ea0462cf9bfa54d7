using ConeService.Contract.Answers;
using ConeService.Contract.Loads;
using ConeService.Contract.Plans;
using ConeService.Contract.Quantities;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing;
using ConeService.Firing.Room;
using ConeService.Planning.Digest;
using ConeService.Planning.Model;
using ConeService.Planning.Requests;
using ConeService.Planning.WhatIf;
using Problem = ConeService.Planning.Model.Problem;

namespace ConeService.Planning.Explain;

/// <summary>Tells a plan in the words of its request.</summary>
internal sealed class PlanWriter
{
    private readonly FiringReference reference;
    private readonly PlanRequest request;
    private readonly Digested digested;
    private readonly Problem problem;
    private readonly Moments moments;
    private readonly List<string> cones;
    private readonly Attended attended;

    /// <summary>Makes a writer.</summary>
    public PlanWriter(FiringReference reference, PlanRequest request, Digested digested)
    {
        (this.reference, this.request, this.digested) = (reference, request, digested);
        (problem, moments) = (digested.Problem, digested.Moments);
        attended = new(reference, digested);
        cones = [.. reference.Dataset.Cones.Where(c => c.Kind == "whole").OrderBy(c => c.Position).Select(c => c.Id)];
    }

    /// <summary>Writes the plan.</summary>
    /// <param name="searched">What was found.</param>
    /// <param name="seed">Seed of the search.</param>
    /// <param name="alternatives">What was found for changed questions.</param>
    public FiringPlan Write(Searched searched, int seed, IReadOnlyList<Alternative> alternatives)
    {
        var plan = searched.Plan;
        var course = new Course(digested, plan);
        var checks = plan.Firings.Select(f => LoadSent.Check(reference, request, digested, f)).ToList();
        var loads = checks.OfType<LoadAnswer>().ToList();
        var firings = plan.Firings.Select((f, i) => Firing(f, i, course, checks[i])).ToList();
        var outcomes = new Outcomes(digested, course, new(digested, plan));
        return new(
            reference.Dataset.VersionId,
            firings,
            outcomes.Pieces,
            outcomes.Undone,
            Summary(searched, outcomes, seed),
            [.. loads.SelectMany(l => l.Cautions).DistinctBy(c => c.Id).OrderByDescending(c => c.Severity)
                .ThenBy(c => c.Id, StringComparer.Ordinal)],
            [.. digested.Warnings.Concat(searched.SolverMissing ? [new PlanFinding(PlanWarningCodes.WithoutSolver, "")] : [])
                .Select(PlanFindings.Warning), .. OfFirings(plan, firings)],
            Basis.Printed,
            [.. loads.SelectMany(l => l.Sources).Concat(ScheduleSources(searched.Plan))
                .Concat(firings.SelectMany(f => f.Attendance).SelectMany(a => a.Sources)).Distinct().Order(StringComparer.Ordinal)],
            [.. digested.Assumed.Select(PlanFindings.Assumed)],
            Confidence.Estimate)
        {
            WhatIf = [.. alternatives.Select(new WhatIfWriter(digested).Told)],
        };
    }

    private PlanSummary Summary(Searched searched, Outcomes outcomes, int seed)
    {
        var (score, bounds) = (searched.Plan.Score, searched.Bounds);
        var least = bounds.CostOf(score);
        var energies = searched.Plan.Firings.Select(Menu).Select(m => m.Hours.KilowattHours).ToList();
        return new(
            outcomes.Pieces.Sum(p => p.Late),
            score.Late,
            outcomes.Undone.Sum(u => u.Count),
            (int)score.Undone,
            score.Cost / 100.0,
            request.Objective?.Cost == "firings" ? null : request.Objective?.Tariff?.Currency,
            energies.TrueForAll(e => e is not null) ? Math.Round(energies.Sum(e => e!.Value), 1) : null,
            score.Changes,
            score.Waiting * 60.0,
            bounds.Late,
            bounds.Undone,
            least / 100.0,
            least is null ? null : score.Cost == 0 ? 0 : Math.Round((score.Cost - least.Value) / (double)score.Cost, 4),
            bounds.IsBestInDates(score) && score.Cost <= least,
            searched.Steps,
            seed);
    }

    // Hours and energy are computed from these schedules, unless both were sent.
    private IEnumerable<string> ScheduleSources(Draft plan) =>
        from id in plan.Firings.Select(f => Menu(f).Hours.Schedule).Distinct()
        from template in reference.Dataset.ScheduleTemplates
        where template.Id == id
        from source in template.Sources
        select source;

    private DigestedFiring Menu(DraftFiring firing) =>
        digested.Kilns[firing.Kiln].Programmes[problem.Kilns[firing.Kiln].Types[firing.Type].Programme];

    // What must be said of single firings; what burns first.
    private IEnumerable<PlanWarning> OfFirings(Draft plan, List<PlanFiring> told)
    {
        var pointers = plan.Firings.Select(f => $"/kilns/{f.Kiln}/firings/{Menu(f).Entry}").ToList();
        return told.Select((f, i) => Attended.Warning(f, pointers[i])).OfType<PlanWarning>()
            .OrderBy(w => w.Code == PlanWarningCodes.LiveFlameAlone ? 0 : 1)
            .Concat(plan.Firings.Select((f, i) => TooFew(f, told[i], pointers[i])).OfType<PlanWarning>());
    }

    private PlanWarning? TooFew(DraftFiring firing, PlanFiring told, string pointer)
    {
        var (menu, held) = (Menu(firing), Fitting(firing));
        if (menu.Sent.Minutes is null || held == SlowWare.Usual) return null;
        var (fitted, _) = digested.Schedules.Of(request.Kilns![firing.Kiln]!.Kiln!, menu.Sent, held);
        if (fitted is not { Minutes: { } minutes } || fitted.Ware == SlowWare.Usual || minutes <= menu.Hours.Minutes) return null;
        return new(
            PlanWarningCodes.MinutesTooFew,
            Message.Of(
                "plans.minutes-too-few", ("number", told.Number), ("kiln", told.KilnId),
                ("sent", QuantityFormat.Duration(menu.Hours.Minutes)), ("fitted", QuantityFormat.Duration(minutes)),
                ("schedule", fitted.Schedule), ("ware", PlanFindings.Words(fitted.Ware))),
            pointer + "/minutes");
    }

    // The dampest and the thickest in a firing.
    private SlowWare Held(DraftFiring firing) =>
        firing.Contents.Aggregate(SlowWare.Usual, (worst, c) => worst.With(SlowWare.Of(digested.Wares[c.Stage].Piece)));

    // What a firing is fitted to: what is in it; of many firings its class, of which the fits are there.
    private SlowWare Fitting(DraftFiring firing) => digested.Schedules.IsBusy ? digested.Class(Held(firing)) : Held(firing);

    // As slow as what is in it asks for, and as the hours are that were planned with.
    private FittedFiring? Fitted(DraftFiring firing, DigestedFiring menu)
    {
        var kiln = request.Kilns![firing.Kiln]!.Kiln!;
        var (held, _) = digested.Schedules.Of(kiln, menu.Sent, Fitting(firing));
        if (held is not null && (menu.Sent.Minutes is not null || held.Minutes == menu.Hours.Minutes)) return held;
        return digested.Schedules.Of(kiln, menu.Sent, menu.Ware).Firing;
    }

    private PlanFiring Firing(DraftFiring firing, int place, Course course, LoadAnswer? check)
    {
        var (model, menu) = (problem.Kilns[firing.Kiln], Menu(firing));
        var (kiln, fitted) = (request.Kilns![firing.Kiln]!.Kiln!, Fitted(firing, menu));
        // A programme that does not end within the hours that were sent is not the one they are of.
        var sheet = menu.Sent.Schedule is null && fitted?.EndMinutes > menu.Hours.Minutes ? null : fitted;
        var layers = Layers(firing, model, place, course);
        var (start, end) = (model.Starts[firing.Start], model.EndOf(firing.Start, firing.Type));
        var packing = new Packing(model.Room);
        foreach (var (stage, count) in firing.Contents) packing.Add(model.Slots[stage], count);
        return new(
            place + 1,
            digested.Kilns[firing.Kiln].Id,
            moments.At(model.LoadAt(firing.Start)),
            moments.At(start),
            moments.At(start + menu.Hours.Minutes),
            moments.At(end),
            menu.Sent.FiringKind.Text!,
            menu.Sent.Cone.Text!,
            menu.Sent.Atmosphere.Text!,
            menu.Hours.Schedule,
            FittedAddress.Of(reference, kiln, menu, fitted?.Ware ?? default, moments.At(start), model.Loading, request.TimeZone),
            Witnesses(menu.Sent.Cone.Text!),
            Math.Round(packing.Fill / 100.0, 1),
            layers,
            menu.Hours.KilowattHours is { } energy ? Math.Round(energy, 1) : null,
            menu.Cost / 100.0,
            Why(firing, model),
            firing.IsPinned,
            end > problem.Horizon)
        {
            Peak = sheet is null ? null : moments.At(start + (int)Math.Round(sheet.PeakMinutes)),
            ProgrammeEnds = sheet is null ? null : moments.At(start + (int)Math.Round(sheet.EndMinutes)),
            ThickestMillimetres = Held(firing).ThickestMillimetres,
            Attendance = attended.Of(kiln, menu, sheet, start),
            LoadingNotes = Explain.LoadingNotes.Of(check, firing, layers, digested),
        };
    }

    private List<PlanLayer> Layers(DraftFiring firing, KilnModel model, int place, Course course)
    {
        // Of each stage the pieces in the order of the request.
        var queues = firing.Contents.ToDictionary(c => c.Stage, c => new Queue<int>(
            course.Singles[problem.Stages[c.Stage].Item]
                .Where(s => s.Stays.Any(y => y.Firing == place && y.Number == problem.Stages[c.Stage].Number)).Select(s => s.Piece)
                .Order()));
        var layers = new List<PlanLayer>();
        foreach (var layer in ShelfPlan.Of(firing.Contents.Select(c => (c.Stage, c.Count, model.Slots[c.Stage]))))
        {
            var pieces = new List<LayerPieces>();
            foreach (var (stage, count) in layer.Contents)
            {
                var queue = queues[stage];
                foreach (var group in Enumerable.Range(0, Math.Min(count, queue.Count)).Select(_ => queue.Dequeue()).GroupBy(p => p)
                    .ToList())
                    pieces.Add(new(digested.Pieces[group.Key].Id, group.Count(), problem.Stages[stage].Number + 1));
            }

            layers.Add(new(layers.Count + 1, layer.Height, Math.Round(layer.Share / 100.0, 1), pieces));
        }

        return layers;
    }

    private FiringReason Why(DraftFiring firing, KilnModel model)
    {
        if (firing.IsPinned) return FiringReason.Pinned;
        var menu = model.Types[firing.Type].Menu;
        if (problem.Announced.Any(a => a.Kiln == firing.Kiln && a.Start == firing.Start && a.Menu == menu)) return FiringReason.Announced;
        return firing.Contents.Any(c => problem.ItemOf(c.Stage).DueBinds) ? FiringReason.Date : FiringReason.Full;
    }

    // Guide, target and guard: the whole cones before and after.
    private List<string> Witnesses(string cone)
    {
        var target = reference.Cones.Read(cone).ToString();
        var at = cones.IndexOf(target);
        return at < 0 ? [target] : [.. cones.Skip(Math.Max(0, at - 1)).Take(at == 0 ? 2 : 3)];
    }
}
