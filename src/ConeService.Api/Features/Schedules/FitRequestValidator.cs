using System.Linq.Expressions;
using ConeService.Api.Http;
using ConeService.Contract.Schedules;
using ConeService.Firing.Schedules.Fitting;
using FluentValidation;

namespace ConeService.Api.Features.Schedules;

/// <summary>What must hold for a fit request as a whole; cones, kiln and start are read later.</summary>
internal sealed class FitRequestValidator : AbstractValidator<FitRequest>
{
    public FitRequestValidator()
    {
        RuleFor(r => r.Units).Must(u => u is "C" or "F")
            .WithErrorCode("units-missing")
            .WithMessage(r => r.Units is null ? "The request does not say whether its temperatures are °C or °F." : $"“{r.Units}” is not a unit of temperature.")
            .WithState(r => new RuleHelp(["C", "F"], r.Units?.Trim().TrimStart('°').ToUpperInvariant() is { } u && u is "C" or "F" ? $"Write {u}." : null));
        Range(r => r.ClockHand, 2, 6, "2 to 6, the hour that the cone points at", "6 o'clock is a cone that is down.");
        Range(r => r.LoadingMinutes, 0, 1440, "0 to 1440 minutes");
        RuleFor(r => r.StartTemperature).Must((r, t) => t is null || (r.Units == "F" ? (t - 32) / 1.8 : t) is >= 0 and <= 200)
            .WithErrorCode("number-out-of-range").WithMessage(r => FormattableString.Invariant($"{r.StartTemperature} is no temperature that a kiln is loaded at.")).WithState(_ => new RuleHelp(["0 to 200 °C", "32 to 392 °F"]));
        Range(r => r.Kiln!.ControllerSegments, 2, 99, "2 to 99 segments", "A controller needs two: one to dry, one to end at the cone.", "controller-too-small", r => r.Kiln is not null);
        Range(r => r.Load!.ThickestMillimetres, 1, 400, "1 to 400 mm", "Millimetres, not centimetres or inches?", "thickness-out-of-range", r => r.Load is not null);
        RuleFor(r => r.Tariff!.Currency).Must(c => c is { Length: 3 } && c.All(char.IsAsciiLetterUpper))
            .WithErrorCode("tariff-without-currency").WithMessage(r => string.IsNullOrWhiteSpace(r.Tariff!.Currency) ? "The tariff names no currency." : $"“{r.Tariff.Currency}” is no code of a currency.")
            .WithState(_ => new RuleHelp(["EUR", "USD", "GBP"], "Three capital letters of ISO 4217.")).When(r => r.Tariff is not null);
        RuleFor(r => r.Tariff!.PerKilowattHour).Must(p => p is >= 0 and <= 1_000_000)
            .WithErrorCode("number-out-of-range").WithMessage("The tariff needs the price of a kWh.").WithState(_ => new RuleHelp(["0 or more"])).When(r => r.Tariff is not null);
    }

    private void Range<T>(Expression<Func<FitRequest, T?>> member, double low, double high, string allowed, string? mistake = null, string code = "number-out-of-range", Func<FitRequest, bool>? when = null)
        where T : struct, IConvertible
    {
        var read = member.Compile();
        RuleFor(member).Must(v => v is not { } value || (value.ToDouble(null) is var d && d >= low && d <= high))
            .WithErrorCode(code)
            .WithMessage(r => FormattableString.Invariant($"{read(r)} is outside what can be computed with."))
            .WithState(_ => new RuleHelp([allowed], mistake))
            .When(r => when is null || when(r));
    }
}
