using System.Globalization;
using ConeService.Contract.Answers;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Problems;
using ConeService.Contract.Quantities;
using ConeService.Contract.Texts;

namespace ConeService.Firing.HeatWork.Logs;

/// <summary>
/// Takes the samples of a log one by one, checks each, and keeps them in one compact array. What is wrong with a
/// sample is a finding that names its line; after <see cref="MostFindings"/> the log is not read further.
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
    private double hottest = double.NegativeInfinity;
    private double hottestSent;
    private int hottestLine;
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
        if (!(Math.Abs(hours) <= MostHours) || !double.IsFinite(degrees))
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

        if (celsius > hottest) (hottest, hottestSent, hottestLine) = (celsius, degrees, line);
        if (Count == 0) firstHours = hours;
        if (Count == points.Length) Grow();
        if (Count == 0 || LineOf(Count) != line) jumps.Add((Count, line));
        points[Count++] = new(hours - firstHours, celsius + Zero);
        if (celsius < ColdestCelsius && !IsHopeless) Findings.Add(TooCold(line, degrees));
    }

    /// <summary>Adds a finding on a line that gave no sample.</summary>
    public void Refuse(Finding finding) => Findings.Add(finding);

    /// <summary>The log, cleaned.</summary>
    /// <exception cref="RefusedException">Samples are wrong, too few, too hot, or run backwards.</exception>
    public CleanLog Clean()
    {
        if (hottest > HottestCelsius) Findings.Insert(0, TooHot());
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
        return LogCleaner.Clean(points.AsMemory(0, Count), index => fieldOf(LineOf(index)));
    }

    // Samples mostly follow each other line by line, so the last jump is nearly always the one.
    private int LineOf(int index)
    {
        for (var i = jumps.Count - 1; i >= 0; i--)
        {
            if (jumps[i].Index <= index) return jumps[i].Line + index - jumps[i].Index;
        }

        return index;
    }

    private Finding TooHot()
    {
        var sent = hottestSent;
        var asCelsius = (sent - 32) / 1.8;
        // The likeliest cause is the other scale's letter: ask back instead of computing a molten kiln.
        return fahrenheit || asCelsius > HottestCelsius
            ? new(
                FindingCodes.LogTemperatureOutOfRange, fieldOf(hottestLine), Text(sent),
                Message.Of("logs.too-hot", ("text", Text(sent)), ("unit", Unit)),
                [Range(fahrenheit)], Message.Of("logs.broken-thermocouple"))
            : new(
                FindingCodes.UnitsSuspect, fieldOf(hottestLine), Text(sent),
                Message.Of("logs.too-hot-in-celsius", ("text", Text(sent))), [Range(fahrenheit)],
                Message.Of("logs.looks-fahrenheit", ("text", Text(sent)), ("celsius", asCelsius)));
    }

    private Finding TooCold(int line, double degrees) => new(
        FindingCodes.LogTemperatureOutOfRange, fieldOf(line), Text(degrees),
        Message.Of("logs.too-cold", ("text", Text(degrees)), ("unit", Unit)),
        [Range(fahrenheit)], Message.Of("logs.reversed-thermocouple"));

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
internal sealed record CleanLog(HeatHistory History, IReadOnlyList<HeatWarning> Warnings, int Samples, int Used);
