using System.Globalization;
using System.Text;
using ConeService.Api.Http;
using ConeService.Contract.Quantities;
using ConeService.Contract.Schedules;

namespace ConeService.Api.Features.Schedules;

/// <summary>
/// The tables of the sheet. Their roles are written out: shown as stacks on a phone, they stay tables for a screen reader.
/// </summary>
internal static class FitSheetTables
{
    /// <summary>The programme, with room to sign each segment.</summary>
    public static void Programme(StringBuilder body, ScheduleFit fit)
    {
        var f = fit.Units == "F";
        var unit = f ? "°F" : "°C";
        (string Head, string Style)[] heads =
        [
            ("No.", "n"), ($"{unit}/h", "n"), ($"To {unit}", "n"), ("Hold", "n"), ("Begins", "n"), ("For", ""),
            ("Vent, atmosphere", ""), ("Read, time", ""), ("By", ""),
        ];
        Open(body, "The programme, to sign segment by segment", heads);
        foreach (var s in fit.Segments)
        {
            var from = fit.Kiln?.Segments[s.Number - 1].StartMinutes ?? s.StartMinutes;
            var rate = f ? s.RateFahrenheitPerHour : s.RateCelsiusPerHour;
            string[] cells =
            [
                rate is { } r ? r.ToString("0", CultureInfo.InvariantCulture) : s.HoldStartMinutes > s.StartMinutes ? "full" : "–",
                (f ? s.TargetFahrenheit : s.TargetCelsius).ToString("0", CultureInfo.InvariantCulture),
                s.HoldMinutes > 0 ? QuantityFormat.Duration(s.HoldMinutes) : "–",
                FitMoments.Short(fit, from),
                s.Purpose.ToString(),
                FitSettings.Words(s, f),
            ];
            Row(body, heads, s.Number.ToString(CultureInfo.InvariantCulture), cells);
        }

        Close(body);
    }

    /// <summary>When to look, with room for what is found.</summary>
    public static void Checks(StringBuilder body, ScheduleFit fit)
    {
        var f = fit.Units == "F";
        (string Head, string Style)[] heads =
            [("Look at", "n"), ("Expect", "n"), ("For", ""), ("Read", ""), (fit.Cone is null ? "Found" : "Cones as found", ""), ("By", "")];
        Open(body, "Checks, with the reading and the cones as found", heads);
        foreach (var check in fit.Operation.Checks)
        {
            string[] cells = [QuantityFormat.Temperature(check.ExpectedCelsius, f), check.Message.ToString()];
            Row(body, heads, FitMoments.Short(fit, check.Minutes), cells);
        }

        Close(body);
    }

    private static void Open(StringBuilder body, string caption, (string Head, string Style)[] heads)
    {
        body.Append(CultureInfo.InvariantCulture,
            $"<table role=\"table\"><caption>{caption}</caption><thead role=\"rowgroup\"><tr role=\"row\">");
        foreach (var (head, style) in heads)
            body.Append(CultureInfo.InvariantCulture, $"<th role=\"columnheader\" scope=\"col\"{Class(style)}>{head}</th>");
        body.AppendLine("</tr></thead><tbody role=\"rowgroup\">");
    }

    private static void Close(StringBuilder body) => body.AppendLine("</tbody></table>");

    // What is left of the columns is room to write in.
    private static void Row(StringBuilder body, (string Head, string Style)[] heads, string first, string[] cells)
    {
        body.Append(CultureInfo.InvariantCulture, $"<tr role=\"row\"><th role=\"rowheader\" scope=\"row\">{E(first)}</th>");
        for (var i = 1; i < heads.Length; i++)
        {
            var (head, style) = heads[i];
            var cell = i <= cells.Length ? E(cells[i - 1]) : "";
            body.Append(CultureInfo.InvariantCulture,
                $"<td role=\"cell\" data-h=\"{head}\"{Class(i <= cells.Length ? style : "sign")}>{cell}</td>");
        }

        body.AppendLine("</tr>");
    }

    private static string Class(string style) => style == "" ? "" : $" class=\"{style}\"";

    private static string E(string text) => HtmlPage.Encode(text);
}
