using System.Globalization;
using System.Text.RegularExpressions;
using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.Schedules;
using ConeService.Data;
using ConeService.Firing.Cones;
using ConeService.Firing.HeatWork;
using ConeService.Firing.Kilns;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>Reads a fit request; what is left out is decided and said so.</summary>
/// <param name="book">The templates.</param>
/// <param name="charts">The charts.</param>
/// <param name="model">The kiln model.</param>
internal sealed partial class FitReader(ScheduleBook book, ConeCharts charts, KilnModel model)
{
    /// <summary>Reads a request whose form was checked (<see cref="FitRequest.Units"/> is C or F, numbers are in range).</summary>
    /// <exception cref="RefusedException">Something can't be answered; carries every finding.</exception>
    public FitQuestion Read(Schedule schedule, FitRequest request)
    {
        var findings = new List<Finding>();
        var assumed = new List<Assumption>();
        var chart = Chart(request.Chart, assumed, findings);
        var target = Target(schedule, request, chart, assumed, findings);
        var kiln = request.Kiln is { } sent ? new KilnReader(sent, charts.Scale, "/kiln", findings) : null;
        var (id, heat, maxCone) = (kiln?.Id(), kiln?.Heat(), kiln?.MaxCone());
        RequireCone(maxCone, target, findings);
        var segments = kiln?.ControllerSegments();
        var (green, dryness, thickness, glaze) = Load(schedule, request.Load ?? new(), assumed, findings);
        var start = Start(request.Start, findings);
        var setup = Kiln(request, kiln, heat, new(request.Load?.KilogramsWare, request.Load?.KilogramsFurniture, thickness, green ? WareStage.Green : WareStage.Bisqued, green ? dryness : null), assumed, findings);
        if (findings.Count > 0) throw new RefusedException(findings);
        var fahrenheit = request.Units == "F";
        return new()
        {
            Schedule = schedule,
            Chart = chart!,
            Target = target,
            Fahrenheit = fahrenheit,
            KilnId = id,
            Heat = heat,
            Kiln = setup,
            MaxCone = maxCone,
            ControllerSegments = segments,
            ThicknessMillimetres = thickness,
            Greenware = green,
            Dryness = dryness,
            Glaze = glaze,
            Start = start,
            LoadingMinutes = request.LoadingMinutes ?? Default("loading-minutes", "loadingMinutes", start is null ? null : assumed),
            StartCelsius = request.StartTemperature is { } atStart ? (fahrenheit ? (atStart - 32) / 1.8 : atStart) : Default("start-temperature", "startTemperature", assumed),
            PricePerKilowattHour = request.Tariff?.PerKilowattHour,
            Currency = request.Tariff?.Currency,
            Assumed = assumed,
        };
    }

    private double Default(string id, string parameter, List<Assumption>? assumed)
    {
        var row = book.DefaultRow(id);
        assumed?.Add(new(parameter, string.Create(CultureInfo.InvariantCulture, $"{row.Value} {row.Unit}"), row.Statement));
        return (double)row.Value;
    }

    private ConeChart? Chart(string? sent, List<Assumption> assumed, List<Finding> findings)
    {
        if (string.IsNullOrWhiteSpace(sent))
        {
            assumed.Add(new("chart", ConeCharts.DefaultChart, "No chart was named; the current chart of self-supporting cones is taken."));
            return charts.Default;
        }

        if (charts.TryFind(sent.Trim(), "/chart", out var chart, out var unknown))
        {
            if (chart.DefaultRate is { } rate && chart.Cones.Any(c => c.Curve(rate) is not null)) return chart;
            unknown = new("chart-without-kinetics", "/chart", sent, $"Chart {chart.Id} gives no way to follow a firing: it states no heating rate.",
                [.. charts.Charts.Where(c => c.Rates.Count > 0).Select(c => c.Id)], $"To fit a schedule use {ConeCharts.DefaultChart}.");
        }

        findings.Add(unknown!);
        return null;
    }

    private FitTarget? Target(Schedule schedule, FitRequest request, ConeChart? chart, List<Assumption> assumed, List<Finding> findings)
    {
        if (request.Cone.IsAbsent)
        {
            if (schedule.EndCone is { } own)
            {
                findings.Add(new("cone-missing", "/cone", null, $"The schedule {schedule.Id} ends at a cone; say which.", [$"\"{schedule.Coolest}\" to \"{schedule.Hottest}\""], $"The template was written for cone {own}."));
            }

            return null;
        }

        if (!ConeInput.TryRead(charts.Scale, request.Cone, "/cone", out var cone, out var wrong))
        {
            findings.Add(wrong!);
            return null;
        }

        if (!schedule.Takes(cone))
        {
            findings.Add(OutsideRange(schedule, cone, request.Cone.Text));
            return null;
        }

        if (chart is null) return null;
        var rate = chart.DefaultRate!.Value;
        if (chart.Find(cone) is not { } found || found.Curve(rate) is null)
        {
            var near = chart.Cones.Where(c => c.Curve(rate) is not null && schedule.Takes(c.Cone)).OrderBy(c => Math.Abs(c.Cone.Position - cone.Position)).Take(3).Select(c => c.Cone.ToString());
            findings.Add(new("cone-not-on-chart", "/cone", cone.ToString(), $"Chart {chart.Id} gives no way to follow cone {cone}.", [.. near]));
            return null;
        }

        if (request.ClockHand is null) assumed.Add(new("clockHand", "6", "The cone shall be just down, at 90°: six o'clock."));
        var clock = request.ClockHand ?? 6;
        return new(found, chart.Cones.FirstOrDefault(c => c.Cone > cone && c.Curve(rate) is not null), clock, clock >= 6 ? 1 : ConeBend.Progress(clock * 15));
    }

    private static Finding OutsideRange(Schedule schedule, Cone cone, string? sent)
    {
        if (schedule.EndCone is null)
        {
            return new("schedule-without-cone", "/cone", sent, $"The schedule {schedule.Id} ends by temperature or by eye, not at a cone.", ["leave the cone out"]);
        }

        var mixUp = schedule.Takes(cone.MixUp) ? $"Cone {cone.MixUp}, with{(cone.IsZeroCone ? "out" : "")} a leading zero, lies in its range and is another cone." : "GET /v1/schedules?cone= lists the schedules for a cone.";
        return new("cone-outside-schedule", "/cone", sent, $"Cone {cone} lies outside the range of the schedule {schedule.Id}.", [$"{schedule.Coolest} to {schedule.Hottest}"], mixUp);
    }

    private void RequireCone(Cone? maxCone, FitTarget? target, List<Finding> findings)
    {
        if (maxCone is not { } most || target is null || most >= target.Cone.Cone) return;
        findings.Add(new("kiln-below-cone", "/kiln/maxCone", most.ToString(), $"The kiln ends at cone {most}, below the target cone {target.Cone.Cone}.", [$"a kiln that reaches cone {target.Cone.Cone}", $"a target up to cone {most}"],
            most.MixUp >= target.Cone.Cone && charts.Scale.Contains(most.MixUp) ? $"Cone {most.MixUp} would reach: a leading zero too many?" : null));
    }

    private static (bool Green, Dryness Dryness, double? Thickness, GlazeCoat Glaze) Load(Schedule schedule, FitLoad load, List<Assumption> assumed, List<Finding> findings)
    {
        var green = schedule.Row.Takes[0] is PieceState.Wet or PieceState.LeatherHard or PieceState.BoneDry;
        var dryness = Dryness.BoneDry;
        if (load.Dryness is not null && !EnumWords.TryRead(load.Dryness, out dryness)) findings.Add(Words.Unknown<Dryness>("/load/dryness", load.Dryness, "a dryness"));
        if (load.Dryness is null && green) assumed.Add(new("load.dryness", "bone-dry", "The template is made for dry ware. Ware that is cold to the cheek is not dry."));
        var glaze = schedule.Row.Kind is FiringKind.Bisque or FiringKind.Pit or FiringKind.Overglaze ? GlazeCoat.None : GlazeCoat.Dry;
        if (load.Glaze is not null && !EnumWords.TryRead(load.Glaze, out glaze)) findings.Add(Words.Unknown<GlazeCoat>("/load/glaze", load.Glaze, "a state of the glaze"));
        if (load.Glaze is null) assumed.Add(new("load.glaze", EnumWords.Word(glaze), glaze == GlazeCoat.None ? "As usual for this kind of firing." : "Glazed, and dry since."));
        if (load.ThickestMillimetres is { } stated) return (green, dryness, stated, glaze);
        var thickness = (double?)schedule.Row.ThicknessMaxMillimetres;
        assumed.Add(thickness is { } t
            ? new("load.thickestMillimetres", t.ToString(CultureInfo.InvariantCulture), "The thickest wall that the template was made for.")
            : new("load.thickestMillimetres", "not stated", "The template's rates are kept; thick walls need slower ones."));
        return (green, dryness, thickness, glaze);
    }

    private static DateTimeOffset? Start(string? sent, List<Finding> findings)
    {
        if (string.IsNullOrWhiteSpace(sent)) return null;
        var text = sent.Trim();
        if (!Offset().IsMatch(text))
        {
            findings.Add(Moment().IsMatch(text)
                ? new("start-without-offset", "/start", sent, "The start names no offset from UTC, so nobody can tell which moment is meant.", [text + "+01:00", text + "Z"], "Clocks change twice a year, and servers stand elsewhere: write the offset.")
                : new("start-unreadable", "/start", sent, $"“{sent}” is not a date and time.", ["2026-12-04T18:00:00+01:00", "2026-12-04T17:00:00Z"]));
            return null;
        }

        if (DateTimeOffset.TryParse(text, CultureInfo.InvariantCulture, DateTimeStyles.None, out var start) && start.Year is >= 1970 and <= 2200) return start;
        findings.Add(new("start-unreadable", "/start", sent, $"“{sent}” is no moment between 1970 and 2200.", ["2026-12-04T18:00:00+01:00"]));
        return null;
    }

    private KilnSetup? Kiln(FitRequest request, KilnReader? kiln, KilnHeat? heat, KilnLoad load, List<Assumption> assumed, List<Finding> findings)
    {
        if (kiln is null)
        {
            assumed.Add(new("kiln", "not stated", "Nothing is said about whether a kiln can follow, about energy and cost."));
            return null;
        }

        if (heat is null or KilnHeat.Wood) return null;
        if (request.Kiln!.ControllerSegments.IsAbsent) assumed.Add(new("kiln.controllerSegments", "no limit", "The controller holds as many segments as the programme has."));
        try
        {
            var setup = model.Resolve(kiln.ForModel(heat.Value, request.Units == "F"), load);
            assumed.AddRange(setup.Assumed);
            return setup;
        }
        catch (RefusedException refused)
        {
            findings.AddRange(refused.Findings);
            return null;
        }
    }

    [GeneratedRegex(@"^\d{4}-\d{2}-\d{2}[T ]\d{2}:\d{2}(:\d{2}(\.\d{1,7})?)?(Z|z|[+-]\d{2}:\d{2})$", RegexOptions.CultureInvariant)]
    private static partial Regex Offset();

    [GeneratedRegex(@"^\d{4}-\d{2}-\d{2}([T ]\d{2}:\d{2}(:\d{2}(\.\d{1,7})?)?)?$", RegexOptions.CultureInvariant)]
    private static partial Regex Moment();
}
