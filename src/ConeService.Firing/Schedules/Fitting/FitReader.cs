using System.Globalization;
using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.Problems;
using ConeService.Contract.Quantities;
using ConeService.Contract.Schedules;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Cones;
using ConeService.Firing.Kilns;
using ConeService.Firing.Schedules.Fitting.Starting;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>Reads a fit request; what is left out is decided and said so.</summary>
/// <param name="catalogue">The templates.</param>
/// <param name="charts">The charts.</param>
/// <param name="model">The kiln model.</param>
internal sealed class FitReader(ScheduleCatalogue catalogue, ConeCharts charts, KilnModel model)
{
    // Where water boils; and where free water begins to leave fast (water-from of kiln-defaults).
    private const double HottestForDry = 100;
    private const double HottestForDamp = 60;

    private readonly FitTargetReader targets = new(charts);

    /// <summary>Reads a request whose form was checked (<see cref="FitRequest.Units"/> is C or F, numbers are in range).</summary>
    /// <param name="schedule">The template.</param>
    /// <param name="request">The request.</param>
    /// <param name="now">Now, where the caller of this library knows it.</param>
    /// <exception cref="RefusedException">Something can't be answered; carries every finding.</exception>
    public FitQuestion Read(Schedule schedule, FitRequest request, DateTimeOffset? now = null)
    {
        var findings = new List<Finding>();
        var assumed = new List<Assumption>();
        var chart = targets.Chart(request.Chart, assumed, findings);
        var target = targets.Target(schedule, request, chart, assumed, findings);
        var kiln = request.Kiln is { } sent ? new KilnReader(sent, charts.Scale, "/kiln", findings) : null;
        var (id, heat, maxCone) = (kiln?.Id(), kiln?.Heat(), kiln?.MaxCone());
        RequireCone(maxCone, target, findings);
        var segments = kiln?.ControllerSegments();
        var (green, dryness, thickness, glaze) = Load(schedule, request.Load ?? new(), assumed, findings);
        var flat = Form(request.Load?.Form, assumed, findings) == WareForm.Flat;
        WetWare(schedule, green, dryness, findings);
        var clock = FitClock.Read(request, assumed, findings);
        var starting = StartReader.Read(request, clock, now, assumed, findings);
        var rule = AttendanceRule.Usual;
        if (request.Attendance is { } sentRule && !EnumWords.TryRead(sentRule, out rule))
        {
            findings.Add(Unknown<AttendanceRule>(
                "/attendance", sentRule, Message.Of("schedules.word-unknown", ("sent", sentRule), ("parameter", "attendance"))));
        }

        var load = new KilnLoad(
            request.Load?.KilogramsWare, request.Load?.KilogramsFurniture, thickness,
            green ? WareStage.Green : WareStage.Bisqued, green ? dryness : null);
        var setup = Kiln(request, kiln, heat, load, assumed, findings);
        var fahrenheit = request.Units == "F";
        var most = setup is null ? MaxCelsius(kiln, heat, fahrenheit, findings) : setup.MaxCelsius;
        var (room, begin) = Temperatures(request, fahrenheit, assumed);
        HotStart(begin, green, dryness, request, findings);
        if (findings.Count > 0) throw new RefusedException(findings);
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
            MaxCelsius = most,
            VoltageShare = setup?.VoltageShare ?? 1,
            ControllerSegments = segments,
            ThicknessMillimetres = thickness,
            Flat = flat,
            Greenware = green,
            Dryness = dryness,
            Glaze = glaze,
            Clock = clock,
            Starting = starting,
            AttendedThroughout = rule == AttendanceRule.WholeFiring,
            LoadingMinutes = request.LoadingMinutes
                ?? Default("loading-minutes", "loadingMinutes", (clock.Start ?? starting?.NotBefore) is null ? null : assumed),
            StartCelsius = begin,
            RoomCelsius = room,
            PricePerKilowattHour = request.Tariff?.PerKilowattHour,
            Currency = request.Tariff?.Currency,
            Assumed = assumed,
        };
    }

    // A wood kiln is not modelled, but its maker's limit holds.
    private static double? MaxCelsius(KilnReader? kiln, KilnHeat? heat, bool fahrenheit, List<Finding> findings)
    {
        if (kiln is null || heat is not KilnHeat.Wood || kiln.MaxCelsius(fahrenheit) is not { } most) return null;
        var wrong = new KilnFindings();
        wrong.InRange("/kiln/maxTemperature", most, KilnChecks.MaxCelsius, "°C");
        findings.AddRange(wrong.All);
        return most;
    }

    private (double Room, double Start) Temperatures(FitRequest request, bool fahrenheit, List<Assumption> assumed)
    {
        double Celsius(double sent) => fahrenheit ? (sent - 32) / 1.8 : sent;
        var room = request.RoomTemperature is { } sent ? Celsius(sent) : Default("start-temperature", "roomTemperature", assumed);
        if (request.StartTemperature is { } start) return (room, Celsius(start));
        assumed.Add(new(
            "startTemperature", string.Create(CultureInfo.InvariantCulture, $"{room:0.#} °C"), Message.Of("schedules.assumed-start")));
        return (room, room);
    }

    // Ware for a schedule of fired ware, or for an open fire, must be dry: neither has the hours that water needs.
    private static void WetWare(Schedule schedule, bool green, Dryness dryness, List<Finding> findings)
    {
        if (dryness == Dryness.BoneDry || (green && schedule.Row.Kind != FiringKind.Pit)) return;
        findings.Add(new(
            FindingCodes.WareNotDry, "/load/dryness", EnumWords.Word(dryness),
            Message.Of(
                "schedules.ware-not-dry",
                ("schedule", schedule.Id), ("dryness", EnumWords.Word(dryness)), ("green", green ? "yes" : "no")),
            Message.Verbatim(["bone-dry"]),
            green ? null : Message.Of("schedules.ware-not-dry-mistake")));
    }

    private static void HotStart(double start, bool green, Dryness dryness, FitRequest request, List<Finding> findings)
    {
        var most = dryness == Dryness.BoneDry ? HottestForDry : HottestForDamp;
        if (!green || start <= most) return;
        findings.Add(new(
            FindingCodes.StartTooHot, "/startTemperature", start.ToString("0.#", CultureInfo.InvariantCulture) + " °C",
            Message.Of(
                "schedules.start-too-hot",
                ("start", QuantityFormat.Temperature(start, request.Units == "F")), ("dryness", EnumWords.Word(dryness))),
            [Message.Of("schedules.start-at-most", ("most", QuantityFormat.Temperature(most, request.Units == "F")))]));
    }

    private double Default(string id, string parameter, List<Assumption>? assumed)
    {
        var row = catalogue.DefaultRow(id);
        var value = string.Create(CultureInfo.InvariantCulture, $"{row.Value} {row.Unit}");
        assumed?.Add(new(parameter, value, Message.Verbatim(row.Statement)));
        return (double)row.Value;
    }

    private void RequireCone(Cone? maxCone, FitTarget? target, List<Finding> findings)
    {
        if (maxCone is not { } most || target is null || most >= target.Cone.Cone) return;
        var (ends, aim, mixUp) = (most.ToString(), target.Cone.Cone.ToString(), most.MixUp);
        findings.Add(new(
            FindingCodes.KilnBelowCone, "/kiln/maxCone", ends, Message.Of("schedules.kiln-below-cone", ("most", ends), ("target", aim)),
            [Message.Of("schedules.kiln-below-cone-kiln", ("cone", aim)), Message.Of("schedules.kiln-below-cone-target", ("cone", ends))],
            mixUp >= target.Cone.Cone && charts.Scale.Contains(mixUp)
                ? Message.Of("schedules.kiln-below-cone-mistake", ("cone", mixUp.ToString()))
                : null));
    }

    private static (bool Green, Dryness Dryness, double? Thickness, GlazeCoat Glaze) Load(
        Schedule schedule, FitLoad load, List<Assumption> assumed, List<Finding> findings)
    {
        var green = schedule.Row.Takes[0] is PieceState.Wet or PieceState.LeatherHard or PieceState.BoneDry;
        load = PiecesAsLoad.Of(load, green, assumed);
        var dryness = Dryness.BoneDry;
        if (load.Dryness is null && green) assumed.Add(new("load.dryness", "bone-dry", Message.Of("schedules.assumed-dryness")));
        if (load.Dryness is { } damp && !EnumWords.TryRead(damp, out dryness))
            findings.Add(Unknown<Dryness>("/load/dryness", damp, Message.Of("schedules.dryness-unknown", ("sent", damp))));
        var glaze = schedule.Row.Kind is FiringKind.Bisque or FiringKind.Pit or FiringKind.Overglaze ? GlazeCoat.None : GlazeCoat.Dry;
        if (load.Glaze is null)
        {
            assumed.Add(new("load.glaze", EnumWords.Word(glaze), glaze == GlazeCoat.None
                ? Message.Of("schedules.assumed-no-glaze")
                : Message.Of("schedules.assumed-dry-glaze")));
        }
        else if (!EnumWords.TryRead(load.Glaze, out glaze))
        {
            findings.Add(Unknown<GlazeCoat>("/load/glaze", load.Glaze, Message.Of("schedules.glaze-unknown", ("sent", load.Glaze))));
        }

        if (load.ThickestMillimetres is { } stated) return (green, dryness, stated, glaze);
        var thickness = (double?)schedule.Row.ThicknessMaxMillimetres;
        assumed.Add(thickness is { } t
            ? new("load.thickestMillimetres", t.ToString(CultureInfo.InvariantCulture), Message.Of("schedules.assumed-thickness"))
            : new("load.thickestMillimetres", "not stated", Message.Of("schedules.assumed-thickness-unknown")));
        return (green, dryness, thickness, glaze);
    }

    private static WareForm Form(string? sent, List<Assumption> assumed, List<Finding> findings)
    {
        var form = WareForm.Hollow;
        if (sent is null) assumed.Add(new("load.form", "hollow", Message.Of("schedules.assumed-hollow")));
        else if (!EnumWords.TryRead(sent, out form))
            findings.Add(Unknown<WareForm>("/load/form", sent, Message.Of("schedules.form-unknown", ("sent", sent))));
        return form;
    }

    private static Finding Unknown<T>(string field, string sent, Message message)
        where T : struct, Enum
    {
        var words = EnumWords.All<T>();
        return new(
            FindingCodes.WordUnknown, field, sent, message, Message.Verbatim(words),
            NearMatches.Find(sent, words) is [var near, ..] ? Message.Of("answers.near-match", ("near", near)) : null);
    }

    private KilnSetup? Kiln(
        FitRequest request, KilnReader? kiln, KilnHeat? heat, KilnLoad load, List<Assumption> assumed, List<Finding> findings)
    {
        if (kiln is null)
        {
            assumed.Add(new("kiln", "not stated", Message.Of("schedules.assumed-no-kiln")));
            return null;
        }

        if (heat is KilnHeat.Wood) return null;
        if (request.Kiln!.ControllerSegments.IsAbsent)
            assumed.Add(new("kiln.controllerSegments", "no limit", Message.Of("schedules.assumed-segments")));
        try
        {
            var setup = model.Resolve(kiln.ForModel(heat ?? KilnHeat.Electric, request.Units == "F"), load);
            if (heat is null) return null;
            assumed.AddRange(setup.Assumed);
            return setup;
        }
        catch (RefusedException refused)
        {
            KilnFindings.Take(refused, findings, heat is not null);
            return null;
        }
    }
}
