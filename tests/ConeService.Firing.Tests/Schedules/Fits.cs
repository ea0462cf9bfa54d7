using ConeService.Contract.Answers;
using ConeService.Contract.Kilns;
using ConeService.Contract.Schedules;
using ConeService.Firing.Schedules.Fitting;
using ConeService.Firing.Tests.Support;

namespace ConeService.Firing.Tests.Schedules;

/// <summary>Fits over the embedded package, and three kilns that are unlike each other.</summary>
internal static class Fits
{
    public static ScheduleFitter Fitter { get; } =
        new(new(Reference.Dataset), Reference.Charts, new(Reference.Dataset), new(Reference.Charts));

    /// <summary>A small top-loader that cools fast, a large one that cools slowly, and an ageing gas kiln.</summary>
    public static IReadOnlyDictionary<string, Kiln> Kilns { get; } = new Dictionary<string, Kiln>
    {
        ["small"] = new("small", "electric", VolumeLitres: 74, Wall: new("insulating-firebrick", 76), Kilowatts: 8),
        ["large"] = new("large", "electric", VolumeLitres: 300, Wall: new("insulating-firebrick", 115), Kilowatts: 24),
        ["gas"] = new("gas", "gas", VolumeLitres: 500, Wall: new("insulating-firebrick", 230), Kilowatts: 90),
    };

    public static FitResult Fit(
        string schedule,
        string? cone,
        Kiln? kiln = null,
        FitLoad? load = null,
        string units = "C",
        double? clock = null,
        string? chart = null,
        FitTariff? tariff = null,
        string? start = null,
        double? startTemperature = null,
        double? roomTemperature = null) =>
        Fitter.Fit(
            Fitter.Catalogue.Find(schedule),
            new(
                SentText.Of(cone), chart, clock, units, kiln, load, start, StartTemperature: startTemperature, Tariff: tariff,
                RoomTemperature: roomTemperature));
}
