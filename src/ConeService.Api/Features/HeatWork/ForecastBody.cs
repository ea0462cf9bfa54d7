using System.Globalization;
using System.IO.Pipelines;
using ConeService.Api.Http;
using ConeService.Contract.Answers;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;

namespace ConeService.Api.Features.HeatWork;

/// <summary>A question on a firing under way as JSON, or a log that is still to be read.</summary>
/// <param name="Value">The question; of an upload an empty one.</param>
/// <param name="Upload">The uploaded log; null for JSON.</param>
internal sealed record ForecastBody(ForecastRequest Value, PipeReader? Upload)
{
    /// <summary>The parameters that go with an upload.</summary>
    public static IReadOnlyList<string> Parameters { get; } =
    [
        "units", "cone", "segments", "coolingRate", "start", "chart", "thermocoupleType", "thermocoupleStandard", "thermocoupleClass",
        "firings", "atmosphere", "timeColumn", "temperatureColumn", "timeZone", "dateOrder",
    ];

    /// <summary>Binds the parameter by the Content-Type header.</summary>
    public static async ValueTask<ForecastBody?> BindAsync(HttpContext context)
    {
        var request = context.Request;
        if (RequestContent.Choose(request, JsonBody.MediaType, Csv.MediaType) == Csv.MediaType)
            return new(new(), await WholeUpload.ReadAsync(request));
        UploadQuery.RefuseBesideJson(request, Parameters);
        return new(await JsonBody.ReadAsync<ForecastRequest>(request), null);
    }

    /// <summary>What is left of a programme: segments of rate, target and hold, such as <c>60,1222,10;-100,1000</c>.</summary>
    /// <param name="text">The parameter; null: nothing is left.</param>
    /// <exception cref="RefusedException">It is none.</exception>
    public static IReadOnlyList<ProgrammeSegment>? Segments(string? text)
    {
        if (text is null) return null;
        var segments = new List<ProgrammeSegment>();
        foreach (var segment in text.Split(';'))
        {
            var parts = segment.Split(',');
            if (parts.Length is < 2 or > 3 || !Read(parts[0], out var rate) || !Read(parts[1], out var target) || target is null
                || !Read(parts.ElementAtOrDefault(2) ?? "", out var hold))
            {
                throw new RefusedException(new Finding(
                    FindingCodes.NumberOutOfRange, "segments", segment, Message.Of("forecast.segments-unreadable", ("text", segment)),
                    Message.Verbatim(["60,1222,10", "150,1100;60,1222", ",1222,10"])));
            }

            segments.Add(new(rate, target, hold ?? 0));
        }

        return segments;
    }

    /// <summary>A number of a parameter; null where it is left out.</summary>
    /// <exception cref="RefusedException">It is none.</exception>
    public static double? Number(string name, string? text) => Read(text ?? "", out var number)
        ? number
        : throw new RefusedException(new Finding(
            FindingCodes.NumberOutOfRange, name, text, Message.Of("forecast.number-unreadable", ("text", text)),
            Message.Verbatim(["150"])));

    private static bool Read(string text, out double? number)
    {
        number = null;
        if (string.IsNullOrWhiteSpace(text)) return true;
        if (!double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var read) || !double.IsFinite(read)) return false;
        number = read;
        return true;
    }
}
