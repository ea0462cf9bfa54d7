using System.Globalization;
using ConeService.Contract.Answers;

namespace ConeService.Contract.Schedules;

/// <summary>What must hold for a fit as a whole; cones, kiln and start are read later.</summary>
public static class FitCheck
{
    /// <summary>Checks a fit.</summary>
    /// <exception cref="RefusedException">Carries every finding.</exception>
    public static void Require(FitRequest request)
    {
        var check = new RequestCheck();
        check.Units(request.Units);
        check.Range(
            request.ClockHand, 2, 6, "/clockHand", "2 to 6, the hour that the cone points at", "6 o'clock is a cone that is down.");
        check.Range(request.LoadingMinutes, 0, 1440, "/loadingMinutes", "0 to 1440 minutes");
        var start = request.StartTemperature;
        check.Require(
            start is null || (request.Units == "F" ? (start - 32) / 1.8 : start) is >= 0 and <= 200, "number-out-of-range", "/startTemperature",
            RequestCheck.Text(start), string.Create(CultureInfo.InvariantCulture, $"{start} is no temperature that a kiln is loaded at."),
            ["0 to 200 °C", "32 to 392 °F"]);
        check.Range(
            request.Load?.ThickestMillimetres, 1, 400, "/load/thickestMillimetres", "1 to 400 mm", "Millimetres, not centimetres or inches?",
            "thickness-out-of-range");
        if (request.Tariff is { } tariff) Tariff(check, tariff);
        check.Done();
    }

    private static void Tariff(RequestCheck check, FitTariff tariff)
    {
        check.Require(
            tariff.Currency is { Length: 3 } code && code.All(char.IsAsciiLetterUpper), "tariff-without-currency", "/tariff/currency", tariff.Currency,
            string.IsNullOrWhiteSpace(tariff.Currency) ? "The tariff names no currency." : $"“{tariff.Currency}” is no code of a currency.",
            ["EUR", "USD", "GBP"], "Three capital letters of ISO 4217.");
        check.Require(
            tariff.PerKilowattHour is >= 0 and <= 1_000_000, "number-out-of-range", "/tariff/perKilowattHour", RequestCheck.Text(tariff.PerKilowattHour),
            "The tariff needs the price of a kWh.", ["0 or more"]);
    }
}
