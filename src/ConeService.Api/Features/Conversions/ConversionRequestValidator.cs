using ConeService.Api.Http;
using ConeService.Contract.Conversions;
using ConeService.Firing.Cones.Conversions;
using FluentValidation;

namespace ConeService.Api.Features.Conversions;

/// <summary>What must hold for a conversion request as a whole; its lines are judged one by one later.</summary>
internal sealed class ConversionRequestValidator : AbstractValidator<ConversionRequest>
{
    public ConversionRequestValidator()
    {
        RuleFor(r => r.Lines).NotEmpty()
            .WithErrorCode("empty-request")
            .WithMessage("The request holds no lines.")
            .WithState(_ => new RuleHelp(["1 to 1,000 lines"]));
        RuleFor(r => r.Lines).Must(l => l is null || l.Count <= Converter.MostLines)
            .WithErrorCode("too-many-lines")
            .WithMessage(r => $"The request holds {r.Lines?.Count} lines.")
            .WithState(_ => new RuleHelp(["1 to 1,000 lines"], "Send several requests."));
        RuleFor(r => r.Units).Must(u => u is null or "C" or "F")
            .WithErrorCode("units-unknown")
            .WithMessage(r => $"“{r.Units}” is not a unit of temperature for bare numbers.")
            .WithState(r => new RuleHelp(["C", "F"], r.Units?.Trim().ToUpperInvariant() is { } u && u is "C" or "F" or "°C" or "°F" ? $"Write {u.TrimStart('°')}." : null));
    }
}
