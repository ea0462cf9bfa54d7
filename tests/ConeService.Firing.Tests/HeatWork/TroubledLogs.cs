using System.Globalization;
using System.Text;
using ConeService.Contract.HeatWork;
using ConeService.Firing.Tests.Support;

namespace ConeService.Firing.Tests.HeatWork;

/// <summary>A log with one trouble and what must come of it, written before it was ever read.</summary>
/// <param name="Name">The trouble.</param>
/// <param name="File">The file.</param>
/// <param name="Expected">Codes of the warnings of a log that answers as the clean one, blanks between them; or “? code” of the
/// question that is asked back.</param>
/// <param name="Reading">What the request says of it.</param>
internal sealed record TroubledLog(string Name, byte[] File, string Expected, LogReading Reading);

/// <summary>
/// Logs of one firing, samples/clean.csv, as loggers, spreadsheets and accidents write them. What is expected of each follows from the
/// trouble alone: it is the clean log in other writing, or something is said, or something is asked.
/// </summary>
internal static class TroubledLogs
{
    private static readonly (double Minutes, double Celsius)[] Samples =
    [
        .. File.ReadLines(Path.Combine(Repository.Root, "samples", "clean.csv")).Skip(1).Select(l => l.Split(','))
            .Select(c => (double.Parse(c[0], CultureInfo.InvariantCulture), double.Parse(c[1], CultureInfo.InvariantCulture))),
    ];

    private static readonly DateTime Evening = new(2026, 11, 20, 18, 30, 0, DateTimeKind.Unspecified);

    public static IReadOnlyList<TroubledLog> All { get; } =
    [
        // Numbers: marks of decimals and thousands, by the whole column.
        Log("quoted decimal commas", Csv("minutes,temp_c", s => $"{N(s.Minutes)},\"{Comma(s.Celsius)}\""), ""),
        Log("thousands with commas and decimals", Csv("minutes,temp_c", s => $"{N(s.Minutes)},\"{F("#,##0.0", s.Celsius)}\""), ""),
        Log(
            "thousands with commas, whole degrees",
            Csv("minutes,temp_c", s => $"{N(s.Minutes)},\"{F("#,##0", s.Celsius)}\""),
            "thousands-read"),
        Log(
            "thousands with points and decimal commas",
            Csv("minutes;temp_c", s => $"{N(s.Minutes)};{German(F("#,##0.0", s.Celsius))}"),
            ""),
        Log(
            "thousands with points, whole degrees",
            Csv("minutes;temp_c", s => $"{N(s.Minutes)};{German(F("#,##0", s.Celsius))}"),
            "thousands-read"),
        Log(
            "thousands with points between commas",
            Csv("minutes,temp_c", s => $"{N(s.Minutes)},{German(F("#,##0", s.Celsius))}"),
            "thousands-read"),
        Log(
            "thousands with blanks",
            Csv("minutes;temp_c", s => $"{N(s.Minutes)};{F("#,##0.0", s.Celsius).Replace(',', '\u00A0').Replace('.', ',')}"),
            ""),
        Log("thousands of seconds", Csv("seconds,temp_c", s => $"\"{F("#,##0", s.Minutes * 60)}\",{N(s.Celsius)}"), "thousands-read"),
        Log(
            "only numbers that may be thousands",
            Csv("minutes;temp_c", s => $"{N(s.Minutes)};{German(F("#,##0", s.Celsius))}", from: 450, to: 650),
            "? number-ambiguous"),
        Log("three decimals with commas", Csv("minutes;temp_c", s => $"{N(s.Minutes)};{German(F("0.000", s.Celsius))}"), ""),
        Log("unit text in the cells", Csv("minutes,temperature", s => $"{N(s.Minutes)},{N(s.Celsius)} °C"), ""),
        Log("unit text in °F", Csv("minutes,temperature", s => $"{N(s.Minutes)},{F("0.0", (s.Celsius * 1.8) + 32)} °F"), ""),
        Log("unit text against the header", Csv("minutes,temp_c", s => $"{N(s.Minutes)},{N(s.Celsius)} F"), "? units-contradict"),

        // Thermocouples.
        Log("open for five minutes early", With(s => s.Minutes is >= 180 and <= 190 ? 1370 : s.Celsius), "excursions-cut"),
        Log("open at the end of type S", With(s => s.Minutes is >= 300 and <= 312 ? 1760 + (s.Minutes % 4) : s.Celsius), "excursions-cut"),
        Log("error number for a quarter of an hour", With(s => s.Minutes is >= 400 and <= 414 ? 9999 : s.Celsius), "excursions-cut"),
        Log("shorted for sixteen minutes near the top", With(s => s.Minutes is >= 560 and <= 576 ? 0 : s.Celsius), "excursions-cut"),
        Log("shorted at the room for ten minutes", With(s => s.Minutes is >= 540 and <= 550 ? 24.5 : s.Celsius), "excursions-cut"),
        Log("shorted for thirty minutes near the top", With(s => s.Minutes is >= 560 and <= 590 ? 0 : s.Celsius), "? log-blind-near-top"),
        Log("open for an hour far below the top", With(s => s.Minutes is >= 200 and <= 260 ? 1371.2 : s.Celsius), "excursions-cut"),
        Log("reversed for ten minutes", With(s => s.Minutes is >= 300 and <= 310 ? -180 : s.Celsius), "excursions-cut"),
        Log("lost while cooling", With(s => s.Minutes >= 700 ? 1371 : s.Celsius), "thermocouple-lost"),
        Log("lost at the top", With(s => s.Minutes >= 604 ? 1371 : s.Celsius), "? log-thermocouple-lost"),
        Log("another thermocouple from the middle on", With(s => s.Minutes >= 300 ? s.Celsius + 200 : s.Celsius), "? log-step-impossible"),
        Log("pulled out while cooling", With(s => s.Minutes >= 720 ? 40 + ((760 - s.Minutes) / 10) : s.Celsius), "impossible-step"),
        Log(
            "an error word for a few minutes",
            Csv("minutes,temp_c", s => $"{N(s.Minutes)},{(s.Minutes is >= 300 and <= 310 ? "OPEN" : N(s.Celsius))}"),
            "readings-missing"),
        Log(
            "empty cells here and there",
            Csv("minutes,temp_c", s => $"{N(s.Minutes)},{(s.Minutes % 14 == 0 ? "" : N(s.Celsius))}"),
            "readings-missing"),
        Log(
            "empty cells over the top",
            Csv("minutes,temp_c", s => $"{N(s.Minutes)},{(s.Minutes is >= 570 and <= 600 ? "" : N(s.Celsius))}"),
            "? log-blind-near-top"),

        // Times.
        Log("German dates", Dates("dd.MM.yyyy HH:mm:ss"), ""),
        Log("days first, the column tells", Dates("dd/MM/yyyy HH:mm"), ""),
        Log("months first, twelve hours", Dates("MM/dd/yyyy hh:mm:ss tt"), ""),
        Log("two digits of the year", Dates("MM/dd/yy HH:mm"), ""),
        Log("names of months", Dates("d MMM yyyy HH:mm:ss"), ""),
        Log("date and time in two columns", Csv("Date,Time,Temp (C)", s => $"{D("dd/MM/yyyy", s)},{D("HH:mm:ss", s)},{N(s.Celsius)}"), ""),
        Log(
            "date and time in German",
            Csv("Datum;Uhrzeit;Temperatur (°C)", s => $"{D("dd.MM.yyyy", s)};{D("HH:mm:ss", s)};{Comma(s.Celsius)}"),
            ""),
        Log(
            "serial numbers of a spreadsheet",
            Csv("time,temp_c", s => $"{F("0.0000000000", Evening.AddMinutes(s.Minutes).ToOADate())},{N(s.Celsius)}"),
            ""),
        Log("UNIX seconds", Csv("timestamp,temp_c", s => $"{F("0", 1_774_728_000 + (s.Minutes * 60))},{N(s.Celsius)}"), ""),
        Log("UNIX milliseconds", Csv("timestamp,temp_c", s => $"{F("0", (1_774_728_000 + (s.Minutes * 60)) * 1000)},{N(s.Celsius)}"), ""),
        Log(
            "every date of one day, both ways",
            Dates("MM/dd/yyyy HH:mm", new(2026, 3, 4, 8, 0, 0, DateTimeKind.Unspecified)),
            "? log-date-ambiguous"),
        Log(
            "every date both ways, order stated", Dates("MM/dd/yyyy HH:mm", new(2026, 3, 4, 8, 0, 0, DateTimeKind.Unspecified)), "",
            new(DateOrder: "month-first")),
        Log(
            "dates both ways through midnight",
            Dates("MM/dd/yyyy HH:mm", new(2026, 3, 4, 20, 0, 0, DateTimeKind.Unspecified)),
            "date-order-decided"),
        Log("spring, the zone stated", Wall(new(2026, 3, 28, 17, 0, 0), 9), "clock-changed", new(TimeZone: "Europe/Berlin")),
        Log("spring near the top without a zone", Wall(new(2026, 3, 28, 17, 0, 0), 9), "? log-clock-change"),
        Log("spring far below the top without a zone", Wall(new(2026, 3, 28, 22, 0, 0), 4), "clock-changed"),
        Log("autumn, the zone stated", Wall(new(2026, 10, 24, 17, 0, 0), 10, -1), "clock-changed", new(TimeZone: "Europe/Berlin")),
        Log("autumn without a zone", Wall(new(2026, 10, 24, 17, 0, 0), 10, -1), "clock-changed"),
        Log(
            "a time that the zone leaves out",
            Dates("yyyy-MM-dd HH:mm", new(2026, 3, 28, 20, 0, 0, DateTimeKind.Unspecified)),
            "? log-clock-change", new(TimeZone: "Europe/Berlin")),
        Log("an unknown zone", Dates("yyyy-MM-dd HH:mm"), "? time-zone-unknown", new(TimeZone: "Berlin/Europe")),
        Log("a zone for minutes", Csv("minutes,temp_c", Plain), "time-zone-unused", new(TimeZone: "Europe/Berlin")),

        // Loggers.
        Log(
            "restarted, time from the beginning",
            Csv("minutes,temp_c", s => $"{N(s.Minutes >= 300 ? s.Minutes - 300 : s.Minutes)},{N(s.Celsius)}"),
            "log-restarted"),
        Log(
            "restarted with its header",
            Csv("minutes,temp_c",
                s => s.Minutes == 300 ? $"minutes,temp_c\n0,{N(s.Celsius)}"
                    : $"{N(s.Minutes > 300 ? s.Minutes - 300 : s.Minutes)},{N(s.Celsius)}"),
            "lines-skipped log-restarted"),
        Log(
            "restarted near the top after a pause",
            Csv("minutes,temp_c",
                s => $"{N(s.Minutes >= 580 ? s.Minutes - 580 : s.Minutes)},{N(s.Minutes >= 580 ? s.Celsius - 60 : s.Celsius)}"),
            "? log-restarted"),
        Log("two firings in one file", Csv("minutes,temp_c", Plain) + Csv("", Plain)[1..], "? log-restarted"),
        Log("a power cut that was not logged", Csv("minutes,temp_c", Plain, without: s => s.Minutes is > 240 and < 262), "gaps"),
        Log(
            "no rows for an hour far below the top", Csv("minutes,temp_c", Plain, without: s => s.Minutes is > 240 and < 300), "gaps"),
        Log(
            "no rows for eighteen minutes near the top", Csv("minutes,temp_c", Plain, without: s => s.Minutes is > 562 and < 580),
            "coarse-sampling gaps"),
        Log("no rows over the top", Csv("minutes,temp_c", Plain, without: s => s.Minutes is > 568 and < 602), "? log-gap-near-top"),
        Log(
            "no rows over the top, newest first",
            string.Join('\n', Csv("", Plain, without: s => s.Minutes is > 568 and < 602).Trim().Split('\n').Reverse()
                .Prepend("minutes,temp_c")),
            "? log-gap-near-top"),
        Log(
            "no rows from the top to where it has cooled", Csv("minutes,temp_c", Plain, without: s => s.Minutes is > 612 and < 740),
            "? log-gap-near-top"),
        Log("comments before the header", "# kiln 2\n# logger 4711, interval 2 min\n" + Csv("minutes,temp_c", Plain), "lines-skipped"),
        Log(
            "lines on the logger before the header",
            "Logger;4711\nInterval;120 s\n\n" + Csv("minutes;temp_c", s => $"{N(s.Minutes)};{N(s.Celsius)}"),
            "lines-skipped"),
        Log(
            "remarks between the samples",
            Csv("minutes,temp_c", s => s.Minutes == 300 ? $"# looked in\n{Plain(s)}" : Plain(s)),
            "lines-skipped"),
        new(
            "UTF-16",
            [0xFF, 0xFE, .. Encoding.Unicode.GetBytes(Csv("minutes\tTemp °C", s => $"{N(s.Minutes)}\t{N(s.Celsius)}"))], "", new()),
        new("UTF-16 without a mark", Encoding.Unicode.GetBytes(Csv("minutes,temp_c", Plain)), "", new()),
        new("Latin 1", Encoding.Latin1.GetBytes(Csv("minutes;Temp °C", s => $"{N(s.Minutes)};{Comma(s.Celsius)}")), "", new()),
        Log(
            "three thermocouples",
            Csv("minutes,top C,middle C,bottom C", s => $"{N(s.Minutes)},{N(s.Celsius + 6)},{N(s.Celsius + 2)},{N(s.Celsius)}"),
            "zones-differ"),
        Log("one of two thermocouples dead", Csv("minutes,top C,bottom C", s => $"{N(s.Minutes)},1371.2,{N(s.Celsius)}"), "zones-differ"),
        Log(
            "one of two thermocouples chosen",
            Csv("minutes,top C,bottom C", s => $"{N(s.Minutes)},{N(s.Celsius + 30)},{N(s.Celsius)}"),
            "columns-ignored", new(TemperatureColumn: "bottom C")),
        Log(
            "a set point beside the temperature",
            Csv("minutes,set C,temp C", s => $"{N(s.Minutes)},{N(s.Celsius + 15)},{N(s.Celsius)}"),
            "columns-ignored"),
        Log(
            "thermocouples of two firings",
            Csv("minutes,top C,bottom C", s => $"{N(s.Minutes)},{N(s.Celsius * 0.7)},{N(s.Celsius)}"),
            "? csv-headers"),
    ];

    public static string Csv(
        string header, Func<(double Minutes, double Celsius), string> row, double from = 0, double to = double.MaxValue,
        Func<(double Minutes, double Celsius), bool>? without = null) =>
        string.Join(
            '\n',
            Samples.Where(s => s.Minutes >= from && s.Minutes <= to && without?.Invoke(s) != true).Select(row).Prepend(header)) + "\n";

    public static string Plain((double Minutes, double Celsius) s) => $"{N(s.Minutes)},{N(s.Celsius)}";

    private static TroubledLog Log(string name, string file, string expected, LogReading? reading = null) =>
        new(name, Encoding.UTF8.GetBytes(file), expected, reading ?? new());

    private static string With(Func<(double Minutes, double Celsius), double> celsius) =>
        Csv("minutes,temp_c", s => $"{N(s.Minutes)},{N(celsius(s))}");

    private static string Dates(string format, DateTime? start = null) =>
        Csv(
            "time,temp_c",
            s => $"{(start ?? Evening).AddMinutes(s.Minutes).ToString(format, CultureInfo.InvariantCulture)},{N(s.Celsius)}");

    // The clock on the wall is put on, or back, after some hours.
    private static string Wall(DateTime start, double afterHours, int by = 1) => Csv(
        "time,temp_c",
        s => start.AddMinutes(s.Minutes + (s.Minutes >= afterHours * 60 ? by * 60 : 0))
            .ToString("yyyy-MM-dd HH:mm:ss", CultureInfo.InvariantCulture) + $",{N(s.Celsius)}");

    private static string D(string format, (double Minutes, double Celsius) s) =>
        Evening.AddMinutes(s.Minutes).ToString(format, CultureInfo.InvariantCulture);

    private static string N(double value) => value.ToString("0.###", CultureInfo.InvariantCulture);

    private static string F(string format, double value) => value.ToString(format, CultureInfo.InvariantCulture);

    private static string Comma(double value) => F("0.0", value).Replace('.', ',');

    private static string German(string number) => number.Replace(',', '\'').Replace('.', ',').Replace('\'', '.');
}
