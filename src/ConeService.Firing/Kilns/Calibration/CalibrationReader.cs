using System.Globalization;
using ConeService.Contract.Answers;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Kilns;
using ConeService.Contract.Problems;
using ConeService.Contract.Quantities;
using ConeService.Contract.Schedules;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.HeatWork;
using ConeService.Firing.HeatWork.Logs;
using ConeService.Firing.Reading;

namespace ConeService.Firing.Kilns.Calibration;

/// <summary>Reads the kiln and its firings; what is wrong with any of them is told together.</summary>
/// <param name="calculator">Reads programmes.</param>
/// <param name="model">The kiln model.</param>
internal sealed class CalibrationReader(HeatWorkCalculator calculator, KilnModel model)
{
    private const double Zero = Temperature.KelvinAtZero;

    // Of longer programmes the model runs no more than this (KilnModel.LongestHours, and 5 °C above its room).
    private const double Coldest = 25;
    private const double Hottest = 1400;
    private const double Slowest = 0.1;

    /// <summary>Reads them.</summary>
    /// <exception cref="RefusedException">Carries every finding.</exception>
    public IReadOnlyList<LoggedFiring> Read(CalibrateRequest request, List<Assumption> assumed)
    {
        var findings = new List<Finding>();
        var reader = new KilnReader(request.Kiln!, calculator.Charts.Scale, "/kiln", findings);
        var heat = reader.Heat();
        // What is sent back must be what the next fit takes.
        _ = (reader.Id(), reader.MaxCone(), reader.ControllerSegments());
        if (request.Kiln!.Atmospheres is not null) _ = reader.Atmospheres();
        if (heat is not (null or KilnHeat.Electric))
        {
            findings.Add(new(
                FindingCodes.KilnParameterNotApplicable, "/kiln/heat", request.Kiln!.Heat.Text, Message.Of("calibration.electric-only"),
                Message.Verbatim(["electric"])));
        }

        var kiln = heat is null ? null : reader.ForModel(heat.Value, request.Units == "F");
        var read = new List<LoggedFiring>();
        for (var i = 0; i < request.Firings!.Count && findings.Count == 0; i++)
        {
            var firing = request.Firings[i]!;
            var at = string.Create(CultureInfo.InvariantCulture, $"/firings/{i}");
            if (firing.Id is { } id && Naming.Check(at + "/id", "id", id) is { } wrongId) findings.Add(wrongId);
            try
            {
                var setup = model.Resolve(kiln!, Load(firing.Load ?? new(), at + "/load", findings), "/kiln", at + "/load");
                assumed.AddRange(setup.Assumed
                    .Where(a => i == 0 || !a.Field.StartsWith("kiln", StringComparison.Ordinal))
                    .Select(a => a.Field.StartsWith("kiln", StringComparison.Ordinal) ? a.InBody() : a.InBody(at)));
                var log = LogSamples.Read(new() { Units = request.Units, Log = firing.Log }, at).History;
                var programme = Programme(request.Units, firing.Segments, log, at, findings);
                read.Add(LoggedFiring.Of(
                    firing.Id ?? (i + 1).ToString(CultureInfo.InvariantCulture), setup, programme, firing.MeterKilowattHours, log));
            }
            catch (RefusedException refused)
            {
                findings.AddRange(refused.Findings);
            }
        }

        if (findings.Count > 0) throw new RefusedException(findings);
        var hours = read.Sum(f => f.CountedHours);
        return hours <= CalibrateRequest.MostHours ? read : throw new RefusedException(new Finding(
            FindingCodes.TooMuchAtOnce, "/firings", string.Create(CultureInfo.InvariantCulture, $"{Math.Round(hours, 1)} h"),
            Message.Of("calibration.too-many-hours", ("hours", hours), ("firings", read.Count)),
            [Message.Of("calibration.hours-allowed", ("hours", CalibrateRequest.MostHours))]));
    }

    private static KilnLoad Load(FitLoad load, string at, List<Finding> findings)
    {
        var (dryness, glaze) = (default(Dryness), GlazeCoat.None);
        if (load.Dryness is { } damp && !EnumWords.TryRead(damp, out dryness))
            findings.Add(Unknown<Dryness>(at + "/dryness", damp, Message.Of("schedules.dryness-unknown", ("sent", damp))));
        if (load.Glaze is { } coat && !EnumWords.TryRead(coat, out glaze))
            findings.Add(Unknown<GlazeCoat>(at + "/glaze", coat, Message.Of("schedules.glaze-unknown", ("sent", coat))));
        WareStage? ware = load.Dryness is not null ? WareStage.Green : glaze != GlazeCoat.None ? WareStage.Bisqued : null;
        return new(
            load.KilogramsWare, load.KilogramsFurniture, load.ThickestMillimetres, ware, load.Dryness is null ? null : dryness);
    }

    private static Finding Unknown<T>(string field, string sent, Message message)
        where T : struct, Enum => new(FindingCodes.WordUnknown, field, sent, message, Message.Verbatim(EnumWords.All<T>()));

    private KilnProgramme? Programme(
        string? units, IReadOnlyList<ProgrammeSegment?>? segments, HeatHistory log, string at, List<Finding> findings)
    {
        if (segments is null) return null;
        var start = Math.Clamp(log.Start.Kelvin - Zero, -20, Hottest);
        var asked = new HeatWorkRequest { Units = units, Start = units == "F" ? (start * 1.8) + 32 : start, Segments = segments };
        var told = ProgrammeReader.Read(asked, at, calculator.Defaults, [], null);
        for (var i = 0; i < told.Segments.Count && findings.Count < 20; i++)
        {
            var (segment, field) = (told.Segments[i], string.Create(CultureInfo.InvariantCulture, $"{at}/segments/{i}"));
            if (segment.TargetKelvin - Zero is not (>= Coldest and <= Hottest))
            {
                findings.Add(HeatSettings.OutOfRange(
                    field + "/target", segments[i]!.Target ?? 0, Message.Of("calibration.target-of-a-kiln")));
            }

            if (segment.RateKelvinPerHour < Slowest)
                findings.Add(HeatSettings.OutOfRange(field + "/rate", segments[i]!.Rate ?? 0, Message.Of("forecast.rate-of-a-kiln")));
            if (segment.HoldHours > KilnModel.LongestHours)
            {
                findings.Add(HeatSettings.OutOfRange(
                    field + "/holdMinutes", segment.HoldHours * 60, Message.Of("forecast.hold-of-a-kiln")));
            }
        }

        return KilnProgramme.Of(told);
    }
}
