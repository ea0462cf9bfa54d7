using System.IO.Pipelines;
using ConeService.Contract.Answers;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;
using ConeService.Firing.HeatWork.Forecasting;
using ConeService.Firing.HeatWork.Logs;

namespace ConeService.Firing;

/// <summary>The log of a firing under way that comes by and by; only its samples are kept. For one caller at a time.</summary>
public sealed class UploadedForecast
{
    private readonly Forecaster forecaster;
    private readonly ForecastRequest request;
    private readonly CsvLogReader log;

    internal UploadedForecast(Forecaster forecaster, ForecastRequest request, CsvLogReader log) =>
        (this.forecaster, this.request, this.log) = (forecaster, request, log);

    /// <summary>The line that is read next, for who must say where an upload broke off.</summary>
    public int NextLine => log.NextLine;

    /// <summary>Reads the log to its end and says what the firing will do.</summary>
    /// <param name="body">The log as CSV.</param>
    /// <param name="cancel">Breaks off.</param>
    /// <exception cref="RefusedException">The question can't be answered; what is wrong with it is named by parameters.</exception>
    public async Task<Forecast> AnswerAsync(PipeReader body, CancellationToken cancel)
    {
        var read = await log.ReadAsync(body, cancel);
        if (read.Zones.Count > 1)
        {
            throw new RefusedException(new Finding(
                FindingCodes.CsvHeaders, "line 1", string.Join(", ", read.Zones.Select(z => z.Column)),
                Message.Of("forecast.several-thermocouples"),
                Message.Verbatim(read.Zones.Select(z => $"?temperatureColumn={Uri.EscapeDataString(z.Column)}"))));
        }

        return ByParameters(() => forecaster.Answer(request, read));
    }

    /// <summary>Asks, and names by parameters what a JSON body names by pointers.</summary>
    internal static Forecast ByParameters(Func<Forecast> ask)
    {
        Forecast forecast;
        try
        {
            forecast = ask();
        }
        catch (RefusedException refused)
        {
            throw Named(refused);
        }

        var answer = forecast.Answer;
        return forecast with
        {
            Answer = answer with
            {
                Assumed = Named(answer.Assumed),
                HeatWork = answer.HeatWork with { Assumed = Named(answer.HeatWork.Assumed) },
            },
        };
    }

    /// <summary>Refuses, with parameters for pointers, when anything was found.</summary>
    internal static void Named(Together together)
    {
        try
        {
            together.Done();
        }
        catch (RefusedException refused)
        {
            throw Named(refused);
        }
    }

    /// <summary>The same refusal, with parameters for pointers.</summary>
    internal static RefusedException Named(RefusedException refused) =>
        new([.. refused.Findings.Select(f => f with { Field = Parameter(f.Field) })]);

    private static List<Assumption> Named(IEnumerable<Assumption> assumed) =>
        [.. assumed.Select(a => a with { Field = Parameter(a.Field) })];

    // /segments/0/target is of segments, /thermocouple/class is thermocoupleClass, and a thermocouple that no standard has begins with its
    // type.
    private static string Parameter(string field) => field.Split('/') switch
    {
        ["", "thermocouple"] => "thermocoupleType",
        ["", "thermocouple", "firings"] => "firings",
        ["", "thermocouple", { Length: > 0 } of] => "thermocouple" + char.ToUpperInvariant(of[0]) + of[1..],
        ["", var first, ..] => first,
        _ => field,
    };
}
