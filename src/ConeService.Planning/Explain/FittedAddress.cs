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
    public static Address? Of(FiringReference reference, Kiln kiln, DigestedFiring menu, SlowWare ware, DateTimeOffset start)
    {
        if (menu.Hours.Schedule is not { } schedule) return null;
        var asked = new List<string> { "units=C",
            "start=" + Escape(start.ToString("yyyy-MM-ddTHH:mm:sszzz", CultureInfo.InvariantCulture)) };
        if (reference.Schedules.Detail(schedule).Schedule.EndCone is not null) asked.Add("cone=" + Escape(menu.Sent.Cone.Text!));
        if (!kiln.Id.IsAbsent) asked.Add("kilnId=" + Escape(kiln.Id.Text!));
        Add("heat", kiln.Heat);
        Add("maxCone", kiln.MaxCone);
        Add("kilowatts", kiln.Kilowatts);
        Add("voltsInstalled", kiln.VoltsInstalled);
        Add("voltsAsWired", kiln.VoltsAsWired);
        if (Litres(kiln) is { } litres) asked.Add("volumeLitres=" + litres);
        if (ware.ThickestMillimetres is { } wall) asked.Add("thickestMillimetres=" + wall.ToString(CultureInfo.InvariantCulture));
        if (ware.Dryness != Dryness.BoneDry) asked.Add("dryness=" + EnumWords.Word(ware.Dryness));
        return new($"/v1/schedules/{schedule}/fit?{string.Join('&', asked)}");

        void Add(string name, SentText sent)
        {
            if (!sent.IsAbsent) asked.Add($"{name}={Escape(sent.Text!)}");
        }
    }

    private static string Escape(string text) => Uri.EscapeDataString(text);

    private static string? Litres(Kiln kiln)
    {
        if (!kiln.VolumeLitres.IsAbsent) return Escape(kiln.VolumeLitres.Text!);
        if (kiln.Interior is not { } inside || Length(inside.HeightMillimetres) is not { } height) return null;
        double? floor = Length(inside.DiameterMillimetres) is { } across
            ? Math.PI / 4 * across * across
            : Length(inside.WidthMillimetres) * (Length(inside.DepthMillimetres) ?? Length(inside.WidthMillimetres));
        return floor is null ? null : Math.Round(floor.Value * height / 1e6, 1).ToString(CultureInfo.InvariantCulture);
    }

    private static double? Length(SentText sent) =>
        double.TryParse(sent.Text, NumberStyles.Float, CultureInfo.InvariantCulture, out var length) ? length : null;
}
