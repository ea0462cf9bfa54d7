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

    /// <summary>Reads them; what is wrong with one part hides nothing of the others.</summary>
    /// <param name="request">The request, whatever is wrong with it.</param>
    /// <param name="assumed">What was left out of it.</param>
    /// <param name="together">Where findings go.</param>
    /// <returns>The firings, all of them where nothing was found.</returns>
    public IReadOnlyList<LoggedFiring> Read(CalibrateRequest request, List<Assumption> assumed, Together together)
    {
        var units = request.Units is "C" or "F" ? request.Units : RequestCheck.Judged(request.Units);
        var (kiln, isHeatKnown) = Kiln(request.Kiln, units, together.Findings);
        var read = new List<LoggedFiring>();
        var firings = request.Firings ?? [];
        for (var i = 0; i < Math.Min(firings.Count, CalibrateRequest.MostFirings); i++)
        {
            if (firings[i] is not { } firing) continue;
            Patience.Check();
            var at = string.Create(CultureInfo.InvariantCulture, $"/firings/{i}");
            if (firing.Id is { } id && Naming.Check(at + "/id", "id", id) is { } wrongId) together.Findings.Add(wrongId);
            var load = Load(firing.Load ?? new(), at + "/load", together.Findings);
            var setup = kiln is null ? null : Setup(kiln, isHeatKnown, load, at, together.Findings);
            if (setup is not null)
            {
                assumed.AddRange(setup.Assumed
                    .Where(a => i == 0 || !a.Field.StartsWith("kiln", StringComparison.Ordinal))
                    .Select(a => a.Field.StartsWith("kiln", StringComparison.Ordinal) ? a.InBody() : a.InBody(at)));
            }

            var log = firing.Log is null
                ? null
                : together.Try(() => LogSamples.Read(new() { Units = units, Log = firing.Log }, at).History);
            var programme = firing.Segments is { Count: > 0 and <= HeatWorkCheck.MostSegments } segments
                ? together.Try(() => Programme(units, segments, log, at, together.Findings))
                : null;
            if (setup is null || log is null || together.Any) continue;
            read.Add(LoggedFiring.Of(
                firing.Id ?? (i + 1).ToString(CultureInfo.InvariantCulture), setup, programme, firing.MeterKilowattHours, log));
        }

        var hours = read.Sum(f => f.CountedHours);
        if (hours > CalibrateRequest.MostHours)
        {
            together.Findings.Add(new(
                FindingCodes.TooMuchAtOnce, "/firings", string.Create(CultureInfo.InvariantCulture, $"{Math.Round(hours, 1)} h"),
                Message.Of("calibration.too-many-hours", ("hours", hours), ("firings", read.Count)),
                [Message.Of("calibration.hours-allowed", ("hours", CalibrateRequest.MostHours))]));
        }

        return read;
    }

    // What is wrong with the kiln is told once and not with each of its loads.
    private KilnSetup? Setup(StatedKiln kiln, bool isHeatKnown, KilnLoad load, string at, List<Finding> findings)
    {
        try
        {
            return model.Resolve(kiln, load, "/kiln", at + "/load");
        }
        catch (RefusedException refused)
        {
            var further = new List<Finding>();
            KilnFindings.Take(refused, further, isHeatKnown);
            findings.AddRange(further.Where(f => !findings.Exists(told => told.Field == f.Field)).ToList());
            return null;
        }
    }

    private (StatedKiln? Kiln, bool IsHeatKnown) Kiln(Kiln? sent, string units, List<Finding> findings)
    {
        if (sent is null) return default;
        var reader = new KilnReader(sent, calculator.Charts.Scale, "/kiln", findings);
        var heat = reader.Heat();
        // What is sent back must be what the next fit takes.
        _ = (reader.Id(), reader.MaxCone(), reader.ControllerSegments());
        if (sent.Atmospheres is not null) _ = reader.Atmospheres();
        if (heat is not (null or KilnHeat.Electric))
        {
            findings.Add(new(
                FindingCodes.KilnParameterNotApplicable, "/kiln/heat", sent.Heat.Text, Message.Of("calibration.electric-only"),
                Message.Verbatim(["electric"])));
        }

        return (reader.ForModel(KilnHeat.Electric, units == "F"), heat == KilnHeat.Electric);
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

    // Without a log from the usual room: only where the programme begins is taken from it.
    private KilnProgramme Programme(
        string units, IReadOnlyList<ProgrammeSegment?> segments, HeatHistory? log, string at, List<Finding> findings)
    {
        var start = Math.Clamp(log is null ? calculator.Defaults["room"] : log.Start.Kelvin - Zero, -20, Hottest);
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
