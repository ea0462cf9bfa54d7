using System.Collections.Frozen;
using System.ComponentModel;
using System.Globalization;
using System.Reflection;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using ConeService.Api.Http.Problems;
using ConeService.Contract.Answers;
using ConeService.Contract.Json;
using ConeService.Contract.Problems;
using ConeService.Contract.Schedules;
using ConeService.Contract.Texts;
using Microsoft.AspNetCore.Mvc;

namespace ConeService.Api.Features.Schedules;

/// <summary>
/// A fit that stands in a link: the common members of the request as query parameters, each named as in the JSON. Read by way of the
/// JSON, so that a link is judged and answered as its body would be. What each is stands in its description, where the document takes it
/// from.
/// </summary>
internal sealed partial class FitParameters
{
    private static readonly FrozenDictionary<string, (PropertyInfo Property, MemberAttribute Member)> Known = typeof(FitParameters)
        .GetProperties()
        .Select(p => (Property: p, Member: p.GetCustomAttribute<MemberAttribute>(), p.GetCustomAttribute<FromQueryAttribute>()?.Name))
        .Where(p => p.Member is not null)
        .ToFrozenDictionary(p => p.Name!, p => (p.Property, p.Member!), StringComparer.Ordinal);

    /// <summary>Names of the parameters.</summary>
    public static string[] Names { get; } = [.. Known.Keys.Order(StringComparer.Ordinal)];

    [Description("The target cone, as text: 06. Left out only for templates that end without a cone.")]
    [FromQuery(Name = "cone"), Member("/cone")]
    public string? Cone { get; init; }

    [Description("Name of the chart whose cone is meant, from /v1/charts.")]
    [FromQuery(Name = "chart"), Member("/chart")]
    public string? Chart { get; init; }

    [Description("Where the target cone shall point, as the hour of a clock, 2 to 6. Left out: 6, down.")]
    [FromQuery(Name = "clockHand"), Member("/clockHand", IsNumber = true)]
    public string? ClockHand { get; init; }

    [Description("C or F: the unit of the temperatures sent, and of the programme's whole degrees. Required.")]
    [FromQuery(Name = "units"), Member("/units")]
    public string? Units { get; init; }

    [Description("When the programme starts: date, time and offset, such as 2026-12-04T18:00:00+01:00; needed for a calendar.")]
    [FromQuery(Name = "start"), Member("/start")]
    public string? Start { get; init; }

    [Description("IANA name of the zone whose clock moments are told by, such as Europe/Berlin; beside it start needs no offset.")]
    [FromQuery(Name = "timeZone"), Member("/timeZone")]
    public string? TimeZone { get; init; }

    [Description("usual, or whole-firing where a local rule asks for somebody at the kiln all the time. Left out: usual.")]
    [FromQuery(Name = "attendance"), Member("/attendance")]
    public string? Attendance { get; init; }

    [Description("How long loading takes before the start, minutes, 0 to 1440.")]
    [FromQuery(Name = "loadingMinutes"), Member("/loadingMinutes", IsNumber = true)]
    public string? LoadingMinutes { get; init; }

    [Description("Temperature of kiln and load at the start, in units. Left out: that of the room.")]
    [FromQuery(Name = "startTemperature"), Member("/startTemperature", IsNumber = true)]
    public string? StartTemperature { get; init; }

    [Description("Temperature of the room, in units. Left out: 20 °C.")]
    [FromQuery(Name = "roomTemperature"), Member("/roomTemperature", IsNumber = true)]
    public string? RoomTemperature { get; init; }

    [Description("Your name for the kiln, repeated in the answer.")]
    [FromQuery(Name = "kilnId"), Member("/kiln/id")]
    public string? KilnId { get; init; }

    [Description("What heats the kiln: electric, gas, wood, raku or vapour. Needed with any other fact of a kiln.")]
    [FromQuery(Name = "heat"), Member("/kiln/heat")]
    public string? Heat { get; init; }

    [Description("The highest cone that the kiln's maker allows, as text.")]
    [FromQuery(Name = "maxCone"), Member("/kiln/maxCone")]
    public string? MaxCone { get; init; }

    [Description("The highest temperature that the kiln's maker allows, in units.")]
    [FromQuery(Name = "maxTemperature"), Member("/kiln/maxTemperature", IsNumber = true)]
    public string? MaxTemperature { get; init; }

    [Description("Inner volume of the kiln, L.")]
    [FromQuery(Name = "volumeLitres"), Member("/kiln/volumeLitres", IsNumber = true)]
    public string? VolumeLitres { get; init; }

    [Description("Inner height of the kiln, mm; with width (and depth) or diameter.")]
    [FromQuery(Name = "interiorHeightMillimetres"), Member("/kiln/interior/heightMillimetres", IsNumber = true)]
    public string? InteriorHeightMillimetres { get; init; }

    [Description("Inner width of a box, mm.")]
    [FromQuery(Name = "interiorWidthMillimetres"), Member("/kiln/interior/widthMillimetres", IsNumber = true)]
    public string? InteriorWidthMillimetres { get; init; }

    [Description("Inner depth of a box, mm.")]
    [FromQuery(Name = "interiorDepthMillimetres"), Member("/kiln/interior/depthMillimetres", IsNumber = true)]
    public string? InteriorDepthMillimetres { get; init; }

    [Description("Inner diameter of a round chamber, mm.")]
    [FromQuery(Name = "interiorDiameterMillimetres"), Member("/kiln/interior/diameterMillimetres", IsNumber = true)]
    public string? InteriorDiameterMillimetres { get; init; }

    [Description("Material of its wall, such as insulating-firebrick. Left out: by size.")]
    [FromQuery(Name = "wallMaterial"), Member("/kiln/wall/material")]
    public string? WallMaterial { get; init; }

    [Description("Thickness of its wall, mm. Left out: by size.")]
    [FromQuery(Name = "wallThicknessMillimetres"), Member("/kiln/wall/thicknessMillimetres", IsNumber = true)]
    public string? WallThicknessMillimetres { get; init; }

    [Description("Rated power, kW. Left out: by size.")]
    [FromQuery(Name = "kilowatts"), Member("/kiln/kilowatts", IsNumber = true)]
    public string? Kilowatts { get; init; }

    [Description("Voltage the elements were made for, V.")]
    [FromQuery(Name = "voltsInstalled"), Member("/kiln/voltsInstalled", IsNumber = true)]
    public string? VoltsInstalled { get; init; }

    [Description("Voltage the kiln really gets, V.")]
    [FromQuery(Name = "voltsAsWired"), Member("/kiln/voltsAsWired", IsNumber = true)]
    public string? VoltsAsWired { get; init; }

    [Description("Age of the elements: 0 new, 1 due for replacement.")]
    [FromQuery(Name = "elementAge"), Member("/kiln/elementAge", IsNumber = true)]
    public string? ElementAge { get; init; }

    [Description("Segments that its controller holds, 2 to 99. Left out: as many as it takes.")]
    [FromQuery(Name = "controllerSegments"), Member("/kiln/controllerSegments", IsNumber = true)]
    public string? ControllerSegments { get; init; }

    [Description("How leaky against a closed kiln, 0 to 20.")]
    [FromQuery(Name = "leakFactor"), Member("/kiln/leakFactor", IsNumber = true)]
    public string? LeakFactor { get; init; }

    [Description("Mass of the ware, kg.")]
    [FromQuery(Name = "kilogramsWare"), Member("/load/kilogramsWare", IsNumber = true)]
    public string? KilogramsWare { get; init; }

    [Description("Mass of shelves and posts, kg.")]
    [FromQuery(Name = "kilogramsFurniture"), Member("/load/kilogramsFurniture", IsNumber = true)]
    public string? KilogramsFurniture { get; init; }

    [Description("Thickest wall of the ware, mm.")]
    [FromQuery(Name = "thickestMillimetres"), Member("/load/thickestMillimetres", IsNumber = true)]
    public string? ThickestMillimetres { get; init; }

    [Description("wet, leather-hard or bone-dry.")]
    [FromQuery(Name = "dryness"), Member("/load/dryness")]
    public string? Dryness { get; init; }

    [Description("none, dry or fresh: the coat on the ware when the firing starts.")]
    [FromQuery(Name = "glaze"), Member("/load/glaze")]
    public string? Glaze { get; init; }

    [Description("hollow, or flat for ware that lies on the shelf and is heated from one side. Left out: hollow.")]
    [FromQuery(Name = "form"), Member("/load/form")]
    public string? Form { get; init; }

    [Description("Price of a kWh; with a currency.")]
    [FromQuery(Name = "perKilowattHour"), Member("/tariff/perKilowattHour", IsNumber = true)]
    public string? PerKilowattHour { get; init; }

    [Description("ISO 4217 code, such as EUR.")]
    [FromQuery(Name = "currency"), Member("/tariff/currency")]
    public string? Currency { get; init; }

    /// <summary>The request that a body of the same facts would be; what is no number goes to the mistakes of the request.</summary>
    public FitRequest ToRequest(HttpContext context)
    {
        var body = new JsonObject();
        foreach (var (name, (property, member)) in Known)
        {
            if (property.GetValue(this) is not string sent) continue;
            var parts = member.Pointer.Split('/')[1..];
            var owner = parts[..^1].Aggregate(body, (at, part) => (JsonObject)(at[part] ??= new JsonObject()));
            if (!member.IsNumber) owner[parts[^1]] = name == "start" ? WithPlus(sent) : sent;
            else if (decimal.TryParse(sent, NumberStyles.Float, CultureInfo.InvariantCulture, out var number)) owner[parts[^1]] = number;
            else
            {
                Mistakes.Add(context, new(
                    FindingCodes.NumberExpected, name, sent, Message.Of("members.number-expected", ("member", name)),
                    [Message.Of("members.any-number")]));
            }
        }

        return body.Deserialize<FitRequest>(ConeJson.Options)!;
    }

    /// <summary>The same refusal, told of the parameters and not of a body that nobody sent.</summary>
    public static RefusedException OfParameters(RefusedException refused) =>
        new([.. refused.Findings.Select(f => f.Field.StartsWith('/') ? f with { Field = NameOf(f.Field) } : f)]);

    private static string NameOf(string pointer)
    {
        var exact = Known.FirstOrDefault(k => k.Value.Member.Pointer == pointer).Key;
        return exact ?? Known.FirstOrDefault(k => pointer.StartsWith(k.Value.Member.Pointer + "/", StringComparison.Ordinal)).Key
            ?? pointer.Split('/')[^1];
    }

    // In a query a plus stands for a blank: an offset that nobody escaped is still what it was meant to be.
    private static string WithPlus(string start) => LostPlus().Replace(start, "+$1");

    [GeneratedRegex(@"(?<=T?\d{2}:\d{2}(?::\d{2}(?:\.\d+)?)?) (\d{2}:\d{2})\s*$", RegexOptions.CultureInvariant)]
    private static partial Regex LostPlus();

    /// <summary>Where a parameter stands in the JSON.</summary>
    [AttributeUsage(AttributeTargets.Property)]
    private sealed class MemberAttribute(string pointer) : Attribute
    {
        /// <summary>JSON pointer.</summary>
        public string Pointer { get; } = pointer;

        /// <summary>True for a JSON number.</summary>
        public bool IsNumber { get; init; }
    }
}
