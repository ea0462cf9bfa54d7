using System.Globalization;
using ConeService.Contract.Answers;
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

    /// <summary>A date with a time, ISO 8601.</summary>
    Timestamp,

    /// <summary>Not told by the header: a clock or a timestamp tells itself by its colons, a bare number is refused.</summary>
    ByValue,
}

/// <summary>Which columns of a log hold time and temperature, and in which units.</summary>
/// <param name="Separator">Comma, semicolon or tab.</param>
/// <param name="Count">Number of columns.</param>
/// <param name="Time">Index of the time.</param>
/// <param name="Temperature">Index of the temperature.</param>
/// <param name="TimeForm">How times are written.</param>
/// <param name="Fahrenheit">True for °F.</param>
/// <param name="Ignored">Names of the other columns.</param>
internal sealed record LogColumns(
    char Separator, int Count, int Time, int Temperature, TimeForm TimeForm, bool Fahrenheit, IReadOnlyList<string> Ignored)
{
    private static readonly HashSet<string> TemperatureNames = new(StringComparer.Ordinal)
    {
        "temp", "temperature", "degrees", "deg", "c", "f", "celsius", "fahrenheit", "degc", "degf", "pv", "reading",
    };

    /// <summary>Reads the header.</summary>
    /// <param name="cells">Its cells.</param>
    /// <param name="separator">What stands between them.</param>
    /// <param name="header">The line as sent, for findings.</param>
    /// <param name="units">C or F from the request; null when it names none.</param>
    /// <param name="timeColumn">Name of the time column from the request; null when it names none.</param>
    /// <param name="temperatureColumn">Name of the temperature column from the request; null when it names none.</param>
    /// <exception cref="RefusedException">A column is missing or ambiguous, or a unit is missing or contradicted.</exception>
    public static LogColumns Read(
        IReadOnlyList<string> cells, char separator, string header, string? units, string? timeColumn, string? temperatureColumn)
    {
        var names = cells.Select(n => n.Trim()).ToArray();
        var parts = names.Select(Words).ToArray();
        var times = timeColumn is not null ? Named(names, timeColumn) : Clearest(parts, Indexes(parts, IsTime));
        var temperatures = temperatureColumn is not null
            ? Named(names, temperatureColumn)
            : Indexes(parts, p => !IsTime(p) && p.Any(TemperatureNames.Contains));
        var findings = new List<Finding>();
        if (times.Length != 1) findings.Add(NotOne("time", times, names, header));
        if (temperatures.Length != 1) findings.Add(NotOne("temperature", temperatures, names, header));
        if (findings.Count > 0) throw new RefusedException(findings);
        return new(
            separator, names.Length, times[0], temperatures[0], FormOf(parts[times[0]]),
            UnitOf(names[temperatures[0]], parts[temperatures[0]], units),
            [.. names.Where((n, i) => i != times[0] && i != temperatures[0] && n.Length > 0)]);
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
        "minutes" or "minute" or "mins" or "min" or "m" => Logs.TimeForm.Minutes,
        "seconds" or "second" or "secs" or "sec" or "s" => Logs.TimeForm.Seconds,
        "hours" or "hour" or "hrs" or "hr" or "h" => Logs.TimeForm.Hours,
        "hh:mm:ss" or "h:mm:ss" or "hh:mm" or "h:mm" or "clock" => Logs.TimeForm.Clock,
        "iso8601" => Logs.TimeForm.Timestamp,
        "time" or "timestamp" or "datetime" or "date" or "elapsed" or "utc" => Logs.TimeForm.ByValue,
        _ => null,
    };

    private static bool IsTime(string[] words) =>
        words.Any(w => Named(w) is not null) && !words.Any(w => w is "temp" or "temperature" or "celsius" or "fahrenheit");

    private static TimeForm FormOf(string[] words)
    {
        var forms = words.Select(Named).OfType<TimeForm>().ToList();
        return forms.FirstOrDefault(f => f != TimeForm.ByValue, TimeForm.ByValue);
    }

    private static bool UnitOf(string name, string[] words, string? units)
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

        return (stated ?? units ?? throw new RefusedException(new Finding(
            FindingCodes.UnitsMissing, "line 1", name, Message.Of("logs.units-missing", ("column", name)),
            [Message.Of("logs.header-with-unit"), Message.Verbatim("?units=C"), Message.Verbatim("?units=F")],
            Message.Of("logs.no-unit-guessed")))) == "F";
    }

    private static int[] Indexes(string[][] parts, Func<string[], bool> isOne) =>
        [.. parts.Select((p, i) => (p, i)).Where(x => isOne(x.p)).Select(x => x.i)];

    private static int[] Named(string[] names, string name) =>
        [.. Enumerable.Range(0, names.Length).Where(i => string.Equals(names[i], name.Trim(), StringComparison.OrdinalIgnoreCase))];

    // A column that states its unit before one that does not.
    private static int[] Clearest(string[][] parts, int[] times) =>
        times.Length > 1 && times.Where(i => FormOf(parts[i]) != Logs.TimeForm.ByValue).ToArray() is [var only] ? [only] : times;

    private static Finding NotOne(string column, int[] found, string[] names, string header)
    {
        if (found.Length > 0)
        {
            return new(
                FindingCodes.CsvHeaders, "line 1", string.Join(", ", found.Select(i => names[i])),
                Message.Of("logs.columns-ambiguous", ("count", found.Length), ("column", column)),
                Message.Verbatim(found.Select(i => $"?{column}Column={Uri.EscapeDataString(names[i])}")));
        }

        var noHeader = names.All(n => double.TryParse(n, NumberStyles.Float, CultureInfo.InvariantCulture, out _));
        return new(
            FindingCodes.CsvHeaders, "line 1", header, Message.Of("logs.column-missing", ("column", column)),
            Message.Verbatim(column == "time"
                ? ["minutes", "seconds", "hours", "time", "hh:mm:ss", "timestamp"]
                : ["temperature_c", "temperature_f", "Temp (°C)", "°F"]),
            noHeader ? Message.Of("logs.header-needed") : null);
    }
}
