using System.Globalization;
using ConeService.Contract.Answers;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Problems;
using ConeService.Contract.Quantities;
using ConeService.Contract.Texts;

namespace ConeService.Firing.HeatWork.Logs;

/// <summary>
/// Takes the samples of one thermocouple one by one and keeps them in one compact array. Whether a sample can be is judged when all are
/// there: a reading that no kiln has may be that of an open thermocouple.
/// </summary>
/// <param name="fahrenheit">True when the samples are °F.</param>
/// <param name="fieldOf">Names a sample in findings by its line: a JSON pointer, or a line of the file.</param>
internal sealed class LogSamples(bool fahrenheit, Func<int, string> fieldOf)
{
    /// <summary>Hottest temperature that is believed, °C.</summary>
    public const double HottestCelsius = ScaleTable.HottestCelsius;

    /// <summary>Coldest temperature that is believed, °C.</summary>
    public const double ColdestCelsius = ScaleTable.ColdestCelsius;

    /// <summary>Longest log, h: beyond it the time is in another unit than stated.</summary>
    public const double LongestHours = 2000;

    /// <summary>The longest log in words.</summary>
    public static readonly Message HoursAllowed = Message.Of("logs.hours-allowed", ("hours", LongestHours));

    // A timestamp of today is some 18 million hours after the year 1.
    private const double MostHours = 1e9;
    private const int MostFindings = 20;
    private const double Zero = Temperature.KelvinAtZero;

    private HeatPoint[] points = new HeatPoint[1024];
    // Where the lines jump: (index, line) of each sample whose line does not follow that of the one before.
    private readonly List<(int Index, int Line)> jumps = [];
    private double firstHours;

    /// <summary>Reads a log of a JSON body.</summary>
    /// <param name="request">The request; its units are C or F.</param>
    /// <param name="at">JSON pointer to the request.</param>
    /// <exception cref="RefusedException">The log can't be used.</exception>
    public static CleanLog Read(HeatWorkRequest request, string at)
    {
        string FieldOf(int sample) => sample < 0 ? at + "/log" : string.Create(CultureInfo.InvariantCulture, $"{at}/log/{sample}");
        var samples = new LogSamples(request.Units == "F", FieldOf);
        for (var i = 0; i < request.Log!.Count && !samples.IsHopeless; i++)
        {
            Patience.Check();
            if (request.Log[i] is { Minutes: { } minutes, Temperature: { } temperature })
            {
                samples.Add(i, minutes / 60, temperature);
                continue;
            }

            samples.Refuse(new(
                FindingCodes.LogValueUnreadable, FieldOf(i), null, Message.Of("heat-work.sample-incomplete"),
                Message.Verbatim(["{\"minutes\": 90, \"temperature\": 1222.5}"])));
        }

        return samples.Clean();
    }

    /// <summary>The temperatures that are believed, in words.</summary>
    public static Message Range(bool fahrenheit) => fahrenheit
        ? Message.Of("answers.range", ("low", "-22"), ("high", "2732 °F"))
        : Message.Of("answers.range", ("low", "-30"), ("high", "1500 °C"));

    /// <summary>What is wrong with single samples.</summary>
    public List<Finding> Findings { get; } = [];

    /// <summary>True when so much is wrong that reading on is of no use.</summary>
    public bool IsHopeless => Findings.Count >= MostFindings;

    /// <summary>How many samples were taken.</summary>
    public int Count { get; private set; }

    /// <summary>Adds a sample.</summary>
    /// <param name="line">Its line or index, as findings name it.</param>
    /// <param name="hours">Time, h, since any moment.</param>
    /// <param name="degrees">Temperature, in the log's unit.</param>
    public void Add(int line, double hours, double degrees)
    {
        var celsius = fahrenheit ? (degrees - 32) / 1.8 : degrees;
        // Differences of larger times, or their sums, would no longer be numbers.
        if (!(KeepHours || Math.Abs(hours) <= MostHours) || !double.IsFinite(degrees))
        {
            Findings.Add(double.IsFinite(degrees)
                ? new(
                    FindingCodes.LogTimeUnreadable, fieldOf(line), FormattableString.Invariant($"{hours:G6} h"),
                    Message.Of("logs.no-moment"), [HoursAllowed])
                : new(
                    FindingCodes.LogValueUnreadable, fieldOf(line), FormattableString.Invariant($"{degrees:G6}"),
                    Message.Of("logs.no-temperature"),
                    Message.Verbatim(["1222.5"])));
            return;
        }

        if (Count == 0 && !KeepHours) firstHours = hours;
        if (Count == points.Length) Grow();
        if (Count == 0 || LineOf(Count) != line) jumps.Add((Count, line));
        points[Count++] = new(hours - firstHours, celsius + Zero);
    }

    /// <summary>Takes note of a row that has a time and no temperature.</summary>
    public void Miss() => missing.Add(Count);

    /// <summary>True when the hours must stay as they were sent.</summary>
    public bool KeepHours { get; init; }

    /// <summary>True for °F.</summary>
    public bool Fahrenheit => fahrenheit;

    /// <summary>The samples taken, hours since the first unless they are kept.</summary>
    public Span<HeatPoint> Taken => points.AsSpan(0, Count);

    /// <summary>A sample in its own unit, and the time of the first.</summary>
    public double DegreesAt(int index) =>
        fahrenheit ? ((points[index].Kelvin - Zero) * 1.8) + 32 : points[index].Kelvin - Zero;

    /// <summary>Hours of a sample since what its log counts from.</summary>
    public double HoursAt(int index) => points[index].Hours + firstHours;

    /// <summary>Reads the temperature of a sample a number of times larger.</summary>
    public void ScaleDegrees(int index, double factor)
    {
        var degrees = DegreesAt(index) * factor;
        points[index] = points[index] with { Kelvin = (fahrenheit ? (degrees - 32) / 1.8 : degrees) + Zero };
    }

    /// <summary>Reads the time of a sample a number of times larger.</summary>
    public void ScaleHours(int index, double factor) =>
        points[index] = points[index] with { Hours = (HoursAt(index) * factor) - firstHours };

    /// <summary>The field of a sample.</summary>
    public string FieldOf(int index) => fieldOf(LineOf(index));

    /// <summary>Adds a finding on a line that gave no sample.</summary>
    public void Refuse(Finding finding) => Findings.Add(finding);

    /// <summary>The log, cleaned.</summary>
    /// <exception cref="RefusedException">Samples are wrong, too few, too hot, or run backwards.</exception>
    public CleanLog Clean()
    {
        if (Findings.Count == 0 && Count == 0)
        {
            Findings.Add(new(FindingCodes.LogEmpty, fieldOf(-1), null, Message.Of("logs.no-samples"), [Message.Of("logs.two-samples")]));
        }

        if (Findings.Count == 0 && Count == 1)
        {
            Findings.Add(new(
                FindingCodes.LogTooShort, fieldOf(LineOf(0)), null, Message.Of("logs.one-sample"), [Message.Of("logs.two-samples")],
                Message.Of("logs.cut-off")));
        }

        if (Findings.Count > 0) throw new RefusedException(Findings);
        return LogCleaner.Clean(this, points.AsMemory(0, Count), missing);
    }

    private readonly List<int> missing = [];

    // Samples mostly follow each other line by line, so the last jump is nearly always the one.
    private int LineOf(int index)
    {
        for (var i = jumps.Count - 1; i >= 0; i--)
        {
            if (jumps[i].Index <= index) return jumps[i].Line + index - jumps[i].Index;
        }

        return index;
    }

    /// <summary>What is told of a sample that no kiln reaches.</summary>
    public Finding TooHot(int index, double kelvin)
    {
        var sent = Math.Round(fahrenheit ? ((kelvin - Zero) * 1.8) + 32 : kelvin - Zero, 6);
        var asCelsius = (sent - 32) / 1.8;
        // The likeliest cause is the other scale's letter: ask back instead of computing a molten kiln.
        return fahrenheit || asCelsius > HottestCelsius
            ? new(
                FindingCodes.LogTemperatureOutOfRange, FieldOf(index), Text(sent),
                Message.Of("logs.too-hot", ("text", Text(sent)), ("unit", Unit)),
                [Range(fahrenheit)], Message.Of("logs.broken-thermocouple"))
            : new(
                FindingCodes.UnitsSuspect, FieldOf(index), Text(sent),
                Message.Of("logs.too-hot-in-celsius", ("text", Text(sent))), [Range(fahrenheit)],
                Message.Of("logs.looks-fahrenheit", ("text", Text(sent)), ("celsius", asCelsius)));
    }

    /// <summary>What is told of a sample that is colder than any studio.</summary>
    public Finding TooCold(int index, double kelvin)
    {
        var degrees = Math.Round(fahrenheit ? ((kelvin - Zero) * 1.8) + 32 : kelvin - Zero, 6);
        return new(
            FindingCodes.LogTemperatureOutOfRange, FieldOf(index), Text(degrees),
            Message.Of("logs.too-cold", ("text", Text(degrees)), ("unit", Unit)),
            [Range(fahrenheit)], Message.Of("logs.reversed-thermocouple"));
    }

    private string Unit => fahrenheit ? "F" : "C";

    private static string Text(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);

    private void Grow()
    {
        // A half more, not double: the largest upload must not cost twice its array.
        Array.Resize(ref points, points.Length + (points.Length / 2));
    }
}

/// <summary>A log ready to be followed.</summary>
/// <param name="History">The firing.</param>
/// <param name="Warnings">What was found in the log and what was done about it.</param>
/// <param name="Samples">Samples sent.</param>
/// <param name="Used">Samples used.</param>
internal sealed record CleanLog(HeatHistory History, IReadOnlyList<HeatWarning> Warnings, int Samples, int Used)
{
    /// <summary>The thermocouples of the log with their columns, this one among them; empty when it has one.</summary>
    public IReadOnlyList<(string Column, CleanLog Log)> Zones { get; init; } = [];

    /// <summary>Columns of thermocouples that gave no firing.</summary>
    public IReadOnlyList<string> Dead { get; init; } = [];
}
