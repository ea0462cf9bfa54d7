using System.Globalization;
using ConeService.Api.Http;
using ConeService.Contract.Schedules;
using ConeService.Data;
using CsvHelper;

namespace ConeService.Api.Features.Schedules;

/// <summary>A fitted programme as CSV, a segment a line.</summary>
internal static class FitCsv
{
    private static readonly string[] Columns =
    [
        "segment", "rate_celsius_per_hour", "rate_fahrenheit_per_hour", "taken_rate_celsius_per_hour", "target_celsius",
        "target_fahrenheit", "ramp_minutes", "hold_minutes", "start_minutes", "hold_start_minutes", "end_minutes",
        "stage", "purpose", "atmosphere",
        "atmosphere_note", "vent", "vent_note", "settings", "template_segments", "confidence", "in_words",
        "schedule", "cone", "chart", "units", "cooling_rate", "dataset_version",
    ];

    /// <summary>Writes the programme; blanks stand for what is null in JSON.</summary>
    public static string Write(ScheduleFit fit)
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        using var csv = CsvWriter.Create(text, Csv.Writing, leaveOpen: true);
        csv.WriteRecord(Columns);
        foreach (var s in fit.Segments)
        {
            csv.WriteField(s.Number);
            csv.WriteField(s.RateCelsiusPerHour);
            csv.WriteField(s.RateFahrenheitPerHour);
            csv.WriteField(s.TakenRateCelsiusPerHour);
            csv.WriteField(s.TargetCelsius);
            csv.WriteField(s.TargetFahrenheit);
            csv.WriteField(s.RampMinutes);
            csv.WriteField(s.HoldMinutes);
            csv.WriteField(s.StartMinutes);
            csv.WriteField(s.HoldStartMinutes);
            csv.WriteField(s.EndMinutes);
            csv.WriteField(EnumWords.Word(s.Stage));
            csv.WriteField(s.Purpose.ToString());
            csv.WriteField(EnumWords.Word(s.Atmosphere));
            csv.WriteField(s.AtmosphereNote);
            csv.WriteField(EnumWords.Word(s.Vent));
            csv.WriteField(s.VentNote);
            csv.WriteField(FitSettings.Words(s, fit.Units == "F"));
            csv.WriteField(string.Join(" ", s.TemplateSegments));
            csv.WriteField(EnumWords.Word(s.Confidence));
            csv.WriteField(s.InWords.ToString());
            csv.WriteField(fit.Schedule.Id);
            csv.WriteField(Csv.Cone(fit.Cone));
            csv.WriteField(fit.Chart);
            csv.WriteField(fit.Units);
            csv.WriteField(fit.Programme.CoolingRate);
            csv.WriteField(fit.DatasetVersion);
            csv.EndRecord();
        }

        csv.Flush();
        return text.ToString();
    }
}
