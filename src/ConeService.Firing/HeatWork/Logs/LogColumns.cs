using System.Globalization;
using ConeService.Contract.Answers;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;

namespace ConeService.Firing.HeatWork.Logs;

/// <summary>How a log writes its times.</summary>
internal enum TimeForm
{
    /// <summary>A number of seconds.</summary>
    Seconds,

    /// <summary>A number of minutes.</summary>
    Minutes,

    /// <summary>A number of hours.</summary>
    Hours,

    /// <summary>hh:mm:ss or hh:mm, of the day or since the start.</summary>
    Clock,

    /// <summary>A date with a time, in one column or two.</summary>
    Timestamp,

    /// <summary>Thousandths of a second.</summary>
    Milliseconds,

    /// <summary>Days of a spreadsheet, since 1899-12-30.</summary>
    Serial,

    /// <summary>Seconds since 1970, UTC.</summary>
    UnixSeconds,

    /// <summary>Thousandths of a second since 1970, UTC.</summary>
    UnixMilliseconds,

    /// <summary>Not told by the header: a clock or a timestamp tells itself by its colons, a bare number is refused.</summary>
    ByValue,
}

/// <summary>A column of temperatures.</summary>
/// <param name="Index">Its index.</param>
/// <param name="Name">Its name.</param>
/// <param name="Unit">C or F by its name or the request; a blank where neither says.</param>
internal sealed record TemperatureColumn(int Index, string Name, char Unit);

/// <summary>Which columns of a log hold time and temperature, and in which units.</summary>
/// <param name="Separator">Comma, semicolon or tab.</param>
/// <param name="Names">Names of the columns.</param>
/// <param name="Date">Index of the date that stands apart from its time; null when none does.</param>
/// <param name="Time">Index of the time.</param>
/// <param name="Temperatures">The temperatures; several when the log has several thermocouples.</param>
/// <param name="TimeForm">How times are written.</param>
/// <param name="Ignored">Names of the other columns.</param>
internal sealed record LogColumns(
    char Separator, IReadOnlyList<string> Names, int? Date, int Time, IReadOnlyList<TemperatureColumn> Temperatures, TimeForm TimeForm,
    IReadOnlyList<string> Ignored)
{
    private static readonly HashSet<string> TemperatureNames = new(StringComparer.Ordinal)
    {
        "temp", "temperature", "temperatur", "degrees", "deg", "c", "f", "celsius", "fahrenheit", "degc", "degf", "pv", "reading",
    };

    // What a controller wants, and what its own box is like, is not what the kiln did.
    private static readonly HashSet<string> NoKilnNames = new(StringComparer.Ordinal)
    {
        "set", "setpoint", "sp", "target", "programme", "program", "soll", "sollwert", "ambient", "room", "internal", "board", "cold",
        "junction", "cj", "umgebung", "raum",
    };

    /// <summary>Number of columns.</summary>
    public int Count => Names.Count;

    /// <summary>The last column that every row must have.</summary>
    public int LastNeeded { get; } = Math.Max(Math.Max(Date ?? 0, Time), Temperatures.Max(t => t.Index));

    /// <summary>True when a line names both a time and a temperature, as only a header does.</summary>
    public static bool IsHeader(IReadOnlyList<string> cells)
    {
        var parts = cells.Select(n => Words(n.Trim())).ToArray();
        return cells.Count > 1 && parts.Any(IsTime) && parts.Any(p => !IsTime(p) && p.Any(TemperatureNames.Contains));
    }

    /// <summary>Reads the header.</summary>
    /// <param name="cells">Its cells.</param>
    /// <param name="separator">What stands between them.</param>
    /// <param name="header">The line as sent, for findings.</param>
    /// <param name="field">Its place, for findings.</param>
    /// <param name="units">C or F from the request; null when it names none.</param>
    /// <param name="reading">Names of columns from the request.</param>
    /// <exception cref="RefusedException">A column is missing or ambiguous, or a unit is contradicted.</exception>
    public static LogColumns Read(
        IReadOnlyList<string> cells, char separator, string header, string field, string? units, LogReading reading)
    {
        var names = cells.Select(n => n.Trim()).ToArray();
        var parts = names.Select(Words).ToArray();
        var times = reading.TimeColumn is { } named ? Named(names, named) : Clearest(parts, Indexes(parts, IsTime));
        int? date = null;
        if (reading.TimeColumn is null && times.Length == 2 && times.Where(i => IsDate(parts[i])).ToArray() is [var only])
        {
            date = only;
            times = [.. times.Where(i => i != only)];
        }

        var temperatures = reading.TemperatureColumn is { } wanted
            ? Named(names, wanted)
            : OfKiln(parts, Indexes(parts, p => !IsTime(p) && p.Any(TemperatureNames.Contains)));
        var findings = new List<Finding>();
        if (times.Length != 1) findings.Add(NotOne("time", times, names, header, field));
        if (temperatures.Length == 0 || temperatures.Select(t => names[t]).Distinct().Count() < temperatures.Length)
        {
            findings.Add(NotOne("temperature", temperatures, names, header, field));
        }

        if (findings.Count > 0) throw new RefusedException(findings);
        return new(
            separator, names, date, times[0],
            [.. temperatures.Select(t => new TemperatureColumn(t, names[t], UnitOf(names[t], parts[t], units)))],
            FormOf(parts[times[0]]),
            [.. names.Where((n, i) => i != times[0] && i != date && !temperatures.Contains(i) && n.Length > 0)]);
    }

    private static bool IsDate(string[] words) => words.Any(w => w is "date" or "datum") && !words.Any(w => w is "time" or "uhrzeit");

    private static int[] OfKiln(string[][] parts, int[] temperatures)
    {
        if (temperatures.Length < 2) return temperatures;
        var ofKiln = temperatures.Where(i => !parts[i].Any(NoKilnNames.Contains)).ToArray();
        return ofKiln.Length > 0 ? ofKiln : temperatures;
    }

    // “Temp (°C)”, “temp_c”, “Elapsed time [min]”: the words and the unit, in lower case. A lost ° is U+FFFD.
    private static string[] Words(string name) =>
        name.ToLowerInvariant()
            .Replace("°", " ", StringComparison.Ordinal)
            .Replace("º", " ", StringComparison.Ordinal)
            .Replace("\uFFFD", " ", StringComparison.Ordinal)
            .Replace("℃", " c ", StringComparison.Ordinal).Replace("℉", " f ", StringComparison.Ordinal)
            .Split([' ', '(', ')', '[', ']', '_', '-', '/', '.'], StringSplitOptions.RemoveEmptyEntries);

    private static TimeForm? Named(string word) => word switch
    {
        "minutes" or "minute" or "mins" or "min" or "m" or "minuten" => Logs.TimeForm.Minutes,
        "seconds" or "second" or "secs" or "sec" or "s" or "sekunden" => Logs.TimeForm.Seconds,
        "hours" or "hour" or "hrs" or "hr" or "h" or "stunden" => Logs.TimeForm.Hours,
        "hh:mm:ss" or "h:mm:ss" or "hh:mm" or "h:mm" or "clock" => Logs.TimeForm.Clock,
        "ms" or "milliseconds" => Logs.TimeForm.Milliseconds,
        "iso8601" => Logs.TimeForm.Timestamp,
        "time" or "timestamp" or "datetime" or "date" or "elapsed" or "utc" or "unix" or "epoch" or "zeit" or "uhrzeit" or "datum"
            or "zeitstempel" or "zeitpunkt" => Logs.TimeForm.ByValue,
        _ => null,
    };

    private static bool IsTime(string[] words) =>
        words.Any(w => Named(w) is not null) && !words.Any(w => w is "temp" or "temperature" or "temperatur" or "celsius" or "fahrenheit");

    private static TimeForm FormOf(string[] words)
    {
        var forms = words.Select(Named).OfType<TimeForm>().ToList();
        return forms.FirstOrDefault(f => f != TimeForm.ByValue, TimeForm.ByValue);
    }

    private static char UnitOf(string name, string[] words, string? units)
    {
        var celsius = words.Any(w => w is "c" or "celsius" or "degc");
        var fahrenheit = words.Any(w => w is "f" or "fahrenheit" or "degf");
        var stated = celsius == fahrenheit ? null : celsius ? "C" : "F";
        if (stated is not null && units is not null && stated != units)
        {
            throw new RefusedException(new Finding(
                FindingCodes.UnitsContradict, "units", units,
                Message.Of("logs.units-contradict", ("header", name), ("stated", stated), ("unit", units)),
                [Message.Of("logs.leave-parameter-out"), Message.Verbatim($"units={stated}")]));
        }

        return (stated ?? units ?? " ")[0];
    }

    /// <summary>What is told when neither header, request nor cells say the unit of a column.</summary>
    public static Finding UnitMissing(string column, string field) => new(
        FindingCodes.UnitsMissing, field, column, Message.Of("logs.units-missing", ("column", column)),
        [Message.Of("logs.header-with-unit"), Message.Verbatim("?units=C"), Message.Verbatim("?units=F")],
        Message.Of("logs.no-unit-guessed"));

    private static int[] Indexes(string[][] parts, Func<string[], bool> isOne) =>
        [.. parts.Select((p, i) => (p, i)).Where(x => isOne(x.p)).Select(x => x.i)];

    private static int[] Named(string[] names, string name) =>
        [.. Enumerable.Range(0, names.Length).Where(i => string.Equals(names[i], name.Trim(), StringComparison.OrdinalIgnoreCase))];

    // A column that states its unit before one that does not.
    private static int[] Clearest(string[][] parts, int[] times) =>
        times.Length > 1 && times.Where(i => FormOf(parts[i]) != Logs.TimeForm.ByValue).ToArray() is [var only] ? [only] : times;

    private static Finding NotOne(string column, int[] found, string[] names, string header, string field)
    {
        if (found.Length > 0)
        {
            return new(
                FindingCodes.CsvHeaders, field, string.Join(", ", found.Select(i => names[i])),
                Message.Of("logs.columns-ambiguous", ("count", found.Length), ("column", column)),
                Message.Verbatim(found.Select(i => $"?{column}Column={Uri.EscapeDataString(names[i])}")));
        }

        var noHeader = names.All(n => double.TryParse(n, NumberStyles.Float, CultureInfo.InvariantCulture, out _));
        return new(
            FindingCodes.CsvHeaders, field, header, Message.Of("logs.column-missing", ("column", column)),
            Message.Verbatim(column == "time"
                ? ["minutes", "seconds", "hours", "time", "hh:mm:ss", "timestamp"]
                : ["temperature_c", "temperature_f", "Temp (°C)", "°F"]),
            noHeader ? Message.Of("logs.header-needed") : null);
    }
}
