using ConeService.Api.Http;
using ConeService.Contract.HeatWork;
using FluentValidation;

namespace ConeService.Api.Features.HeatWork;

/// <summary>What must hold for a firing as a whole, before it is read.</summary>
internal class FiringValidator<T> : AbstractValidator<T>
    where T : HeatWorkRequest
{
    private const int MostSegments = 10_000;

    public FiringValidator()
    {
        RuleFor(r => r.Units).Must(u => u is "C" or "F")
            .WithErrorCode("units-missing")
            .WithMessage(r => r.Units is null ? "The request does not say whether its temperatures are °C or °F." : $"“{r.Units}” is not a unit of temperature.")
            .WithState(r => new RuleHelp(["C", "F"], r.Units?.Trim().TrimStart('°').ToUpperInvariant() is { } u && u is "C" or "F" ? $"Write {u}." : null));
        RuleFor(r => r.Segments).Must((r, s) => s is null != r.Log is null)
            .WithErrorCode("firing-ambiguous")
            .WithMessage(r => r.Log is null ? "The request holds neither the segments of a programme nor a log." : "The request holds both segments and a log: which one is to be followed?")
            .WithState(_ => new RuleHelp(["segments", "log"]));
        RuleFor(r => r.Segments).Must(s => s is null or { Count: > 0 })
            .WithErrorCode("empty-request")
            .WithMessage("The programme has no segments.")
            .WithState(_ => new RuleHelp(["1 to 10,000 segments"]));
        RuleFor(r => r.Segments).Must(s => s is null or { Count: <= MostSegments })
            .WithErrorCode("too-many-segments")
            .WithMessage(r => $"The programme has {r.Segments?.Count} segments.")
            .WithState(_ => new RuleHelp(["1 to 10,000 segments"], "A log? Send it as log, or as text/csv."));
        RuleFor(r => r.Log).Must((r, l) => l is null || (r.Start is null && r.CoolingRate is null && r.NaturalCooling is null && r.FullSpeedRate is null))
            .WithErrorCode("firing-ambiguous")
            .WithMessage("A log has no start, cooling or full-speed rate of a programme: they would be dropped.")
            .WithState(_ => new RuleHelp(["a log alone"]));
    }
}

/// <summary>A question with a programme.</summary>
internal sealed class SolveValidator : FiringValidator<SolveRequest>
{
    public SolveValidator() => RuleFor(r => r.Log).Must(l => l is null)
        .WithErrorCode("firing-ambiguous")
        .WithMessage("A log is what was; only a programme can still be changed.")
        .WithState(_ => new RuleHelp(["segments"]));
}

/// <summary>One firing with witness cones, or several.</summary>
internal sealed class CompareValidator : AbstractValidator<CompareRequest>
{
    public CompareValidator()
    {
        RuleFor(r => r).SetValidator(new FiringValidator<CompareRequest>()).When(r => r.Firings is null);
        RuleFor(r => r.Firings).Must((r, f) => f is null || (r.Log is null && r.Segments is null && r.Observations is null && r.Units is null && r.Chart is null && r.Thermocouple is null && r.Uncertainty is null))
            .WithErrorCode("firing-ambiguous")
            .WithMessage("With firings, each of them carries its own units, log, chart, thermocouple and observations; those beside the list would be dropped.")
            .WithState(_ => new RuleHelp(["firings alone", "one firing without the list"]));
        RuleForEach(r => r.Firings).NotNull()
            .WithErrorCode("empty-request").WithMessage("A firing is null.").WithState(_ => new RuleHelp(["an object with units, log and observations"]));
        RuleForEach(r => r.Firings).SetValidator(new FiringValidator<WitnessedFiring>()!);
    }
}
