using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Requests;
using ConeService.Contract.Texts;

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
            request.ClockHand, Bounds.Of<FitRequest>(nameof(FitRequest.ClockHand)), "/clockHand",
            Message.Of("schedules.clock-allowed"), Message.Of("schedules.clock-mistake"));
        check.Range(
            request.LoadingMinutes, Bounds.Of<FitRequest>(nameof(FitRequest.LoadingMinutes)), "/loadingMinutes",
            Message.Of("schedules.minutes-allowed"));
        var start = request.StartTemperature;
        check.Require(
            start is null || (request.Units == "F" ? (start - 32) / 1.8 : start) is >= -20 and <= 200,
            FindingCodes.NumberOutOfRange, "/startTemperature",
            RequestCheck.Text(start), Message.Of("schedules.start-temperature", ("sent", start)),
            Message.Verbatim(["-20 to 200 °C", "-4 to 392 °F"]));
        var room = request.RoomTemperature;
        check.Require(
            room is null || (request.Units == "F" ? (room - 32) / 1.8 : room) is >= -20 and <= 50,
            FindingCodes.NumberOutOfRange, "/roomTemperature",
            RequestCheck.Text(room), Message.Of("schedules.room-temperature", ("sent", room)),
            Message.Verbatim(["-20 to 50 °C", "-4 to 122 °F"]));
        check.Range(
            request.Load?.ThickestMillimetres, Bounds.Of<FitLoad>(nameof(FitLoad.ThickestMillimetres)), "/load/thickestMillimetres",
            Message.Of("schedules.thickness-allowed"),
            Message.Of("schedules.millimetres-mistake"), FindingCodes.ThicknessOutOfRange);
        if (request.Tariff is { } tariff) Tariff(check, tariff);
        check.Done();
    }

    private static void Tariff(RequestCheck check, FitTariff tariff)
    {
        check.Require(
            tariff.Currency is { Length: 3 } code && code.All(char.IsAsciiLetterUpper),
            FindingCodes.TariffWithoutCurrency, "/tariff/currency", tariff.Currency,
            string.IsNullOrWhiteSpace(tariff.Currency)
                ? Message.Of("schedules.currency-missing")
                : Message.Of("schedules.currency-unknown", ("sent", tariff.Currency)),
            Message.Verbatim(["EUR", "USD", "GBP"]), Message.Of("schedules.currency-letters"));
        check.Require(
            tariff.PerKilowattHour is { } price && Bounds.Of<FitTariff>(nameof(FitTariff.PerKilowattHour)).Contain(price),
            FindingCodes.NumberOutOfRange, "/tariff/perKilowattHour", RequestCheck.Text(tariff.PerKilowattHour),
            Message.Of("schedules.price-missing"), [Message.Of("schedules.price-allowed")]);
    }
}
