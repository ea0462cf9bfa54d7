using System.Globalization;
using ConeService.Contract.Answers;
using ConeService.Contract.Kilns;
using ConeService.Data;
using ConeService.Firing;
using ConeService.Firing.Kilns;
using ConeService.Planning.Digest;

namespace ConeService.Planning.Explain;

/// <summary>The address of the schedule fitted to a firing of a plan, which is its sheet to fire by.</summary>
internal static class FittedAddress
{
    /// <summary>The address; null where the firing has no schedule.</summary>
    /// <param name="reference">The schedules.</param>
    /// <param name="kiln">The kiln.</param>
    /// <param name="menu">The firing.</param>
    /// <param name="ware">The dampest and the thickest in it, as its schedule asks of them.</param>
    /// <param name="start">When it starts.</param>
    /// <param name="loading">How long loading takes before it, min.</param>
    /// <param name="timeZone">IANA name of the zone of the plan; null: none was sent.</param>
    public static Address? Of(
        FiringReference reference, Kiln kiln, DigestedFiring menu, SlowWare ware, DateTimeOffset start, int loading, string? timeZone)
    {
        if (menu.Hours.Schedule is not { } schedule) return null;
        var asked = new List<string> { "units=C",
            "start=" + Escape(start.ToString("yyyy-MM-ddTHH:mm:sszzz", CultureInfo.InvariantCulture)) };
        if (!string.IsNullOrWhiteSpace(timeZone)) asked.Add("timeZone=" + Escape(timeZone.Trim()));
        asked.Add("loadingMinutes=" + loading.ToString(CultureInfo.InvariantCulture));
        if (reference.Schedules.Detail(schedule).Schedule.EndCone is not null) asked.Add("cone=" + Escape(menu.Sent.Cone.Text!));
        if (!kiln.Id.IsAbsent) asked.Add("kilnId=" + Escape(kiln.Id.Text!));
        Add("heat", kiln.Heat);
        Add("maxCone", kiln.MaxCone);
        Add("maxTemperature", kiln.MaxTemperature);
        Add("kilowatts", kiln.Kilowatts);
        Add("voltsInstalled", kiln.VoltsInstalled);
        Add("voltsAsWired", kiln.VoltsAsWired);
        Add("elementAge", kiln.ElementAge);
        Add("controllerSegments", kiln.ControllerSegments);
        Add("leakFactor", kiln.LeakFactor);
        Add("wallMaterial", kiln.Wall?.Material ?? default);
        Add("wallThicknessMillimetres", kiln.Wall?.ThicknessMillimetres ?? default);
        Add("volumeLitres", kiln.VolumeLitres);
        Add("interiorHeightMillimetres", kiln.Interior?.HeightMillimetres ?? default);
        Add("interiorWidthMillimetres", kiln.Interior?.WidthMillimetres ?? default);
        Add("interiorDepthMillimetres", kiln.Interior?.DepthMillimetres ?? default);
        Add("interiorDiameterMillimetres", kiln.Interior?.DiameterMillimetres ?? default);
        if (ware.ThickestMillimetres is { } wall) asked.Add("thickestMillimetres=" + wall.ToString(CultureInfo.InvariantCulture));
        if (ware.Dryness != Dryness.BoneDry) asked.Add("dryness=" + EnumWords.Word(ware.Dryness));
        return new($"/v1/schedules/{schedule}/fit?{string.Join('&', asked)}");

        void Add(string name, SentText sent)
        {
            if (!sent.IsAbsent) asked.Add($"{name}={Escape(sent.Text!)}");
        }
    }

    private static string Escape(string text) => Uri.EscapeDataString(text);
}
