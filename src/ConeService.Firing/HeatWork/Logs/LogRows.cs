using System.Text;
using ConeService.Contract.Answers;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;
using CsvHelper;

namespace ConeService.Firing.HeatWork.Logs;

/// <summary>Makes samples of the rows of a log. For one log only.</summary>
/// <param name="columns">Its columns.</param>
/// <param name="reading">How the log is to be read, from the request.</param>
/// <param name="headerLine">Line of the header.</param>
internal sealed class LogRows(LogColumns columns, LogReading reading, int headerLine)
{
    private const int MostFindings = 20;
    private const int HopelessRows = 1000;

    // Fewer samples than this make no firing of which a reading could be missing.
    private const int LeastSamples = 10;
    private const double MostMissingShare = 0.1;
    private const int TimeColumn = -1;

    private readonly LogTimes times = new(reading);
    private readonly LogMarks marks = new(columns.Separator);
    private readonly LogGaps noTime = new();
    private readonly LogGaps[] noReading = [.. columns.Temperatures.Select(_ => new LogGaps())];
    private readonly char[] units = [.. columns.Temperatures.Select(t => t.Unit)];
    private LogSamples?[]? samples;
    private TimeForm form = columns.TimeForm;

    /// <summary>What makes the log unusable.</summary>
    public List<Finding> Findings { get; } = [];

    /// <summary>True when so much is wrong that reading on is of no use.</summary>
    public bool IsHopeless => Findings.Count >= MostFindings || (noTime.Count > HopelessRows && (samples?[0]?.Count ?? 0) < LeastSamples);

    /// <summary>Adds a finding on a row that gave no sample.</summary>
    public void Refuse(Finding finding) => Findings.Add(finding);

    /// <summary>Reads a row.</summary>
    /// <param name="csv">The reader, at the row.</param>
    /// <param name="line">Its line.</param>
    public void Add(CsvReader csv, int line)
    {
        if (!TryTime(csv, line, out var hours))
        {
            noTime.Add(LogCells.Bare(csv.GetSpan(columns.Time)), line);
            return;
        }

        for (var zone = 0; zone < columns.Temperatures.Count; zone++) Add(csv, zone, line, hours);
    }

    /// <summary>The log, cleaned.</summary>
    /// <param name="warnings">What was found so far.</param>
    /// <exception cref="RefusedException">It can't be used.</exception>
    public CleanLog Clean(List<HeatWarning> warnings)
    {
        var taken = samples?.Max(s => s?.Count ?? 0) ?? 0;
        var few = taken < LeastSamples;
        if (noTime.Count > 0 && (few || noTime.Count > Math.Max(3, MostMissingShare * taken)))
        {
            var example = form switch { TimeForm.Clock => "01:30:00", TimeForm.Timestamp => "2026-11-25T08:00:00Z", _ => "90" };
            Findings.AddRange(noTime.Findings(
                FindingCodes.LogTimeUnreadable,
                (text, count) => text.Length == 0
                    ? Message.Of("logs.time-blank-times", ("count", count))
                    : Message.Of("logs.time-unreadable-times", ("text", text), ("count", count)),
                example));
        }
        else if (noTime.Count > 0)
        {
            warnings.Add(new(
                WarningCodes.LinesSkipped, Message.Of("logs.lines-without-time", ("count", noTime.Count)), noTime.Count, []));
        }

        if (few)
        {
            Findings.AddRange(noReading.SelectMany(n => n.Findings(
                FindingCodes.LogValueUnreadable,
                (text, count) => text.Length == 0
                    ? Message.Of("logs.temperature-blank-times", ("count", count))
                    : Message.Of("logs.temperature-unreadable-times", ("text", text), ("count", count)),
                "1222.5")));
        }

        if (Findings.Count > 0) throw new RefusedException([.. Findings.Take(MostFindings)]);
        if (samples is null)
        {
            throw new RefusedException(new Finding(
                FindingCodes.LogEmpty, "", null, Message.Of("logs.no-samples"), [Message.Of("logs.two-samples")]));
        }

        SettleMarks(warnings);
        var logs = new LogZones(columns).Clean(samples!, noReading, times);
        if (times.Midnights.Count > 0)
        {
            warnings.Add(HeatWarning.At(WarningCodes.ClockPassedMidnight, Message.Of("logs.midnight"), times.Midnights));
        }

        return logs with { Warnings = [.. warnings, .. logs.Warnings] };
    }

    private void Add(CsvReader csv, int zone, int line, double hours)
    {
        var index = columns.Temperatures[zone].Index;
        var cell = csv.GetSpan(index);
        if (LogCells.TryPlain(cell, out var degrees, out var decimals))
        {
            var into = Samples(zone, ' ', line);
            if (decimals >= 0 && !marks.PointIsDecimal && LogNumber.TryParse(cell, out var plain))
            {
                marks.Note(zone, plain, into.Fahrenheit ? 2732 : LogSamples.HottestCelsius, into.Count, line, cell);
            }

            into.Add(line, hours, degrees);
            return;
        }

        if (!LogNumber.TryParse(LogCells.Bare(cell), out var number))
        {
            noReading[zone].Add(LogCells.Bare(cell), line);
            samples?[zone]?.Miss();
            return;
        }

        var samplesOf = Samples(zone, number.Unit, line);
        if (number.Mark != NumberMark.None)
        {
            marks.Note(zone, number, samplesOf.Fahrenheit ? 2732 : LogSamples.HottestCelsius, samplesOf.Count, line, LogCells.Bare(cell));
        }

        samplesOf.Add(line, hours, number.Value);
    }

    private LogSamples Samples(int zone, char unit, int line)
    {
        samples ??= new LogSamples?[columns.Temperatures.Count];
        if (samples[zone] is { } there && (unit == ' ' || unit == units[zone])) return there;
        var column = columns.Temperatures[zone];
        if (unit != ' ' && units[zone] != ' ' && units[zone] != unit)
        {
            throw new RefusedException(new Finding(
                FindingCodes.UnitsContradict, CsvLogReader.FieldOf(line), unit.ToString(),
                Message.Of("logs.units-contradict-in-cell", ("unit", unit.ToString()), ("stated", units[zone].ToString())),
                [Message.Of("logs.one-unit")]));
        }

        if (unit != ' ') units[zone] = unit;
        if (units[zone] == ' ') throw new RefusedException(LogColumns.UnitMissing(column.Name, CsvLogReader.FieldOf(headerLine)));
        return samples[zone] ??= new(units[zone] == 'F', CsvLogReader.FieldOf) { KeepHours = times.ArePacked };
    }

    private bool TryTime(CsvReader csv, int line, out double hours)
    {
        if (form is TimeForm.Minutes or TimeForm.Seconds or TimeForm.Hours or TimeForm.Milliseconds
            or TimeForm.Serial or TimeForm.UnixSeconds or TimeForm.UnixMilliseconds)
        {
            if (TryNumber(csv, line, out var count))
            {
                hours = times.Of(form, count);
                return true;
            }

            // A header may say minutes of a clock.
            if (samples is not null || !LogCells.Bare(csv.GetSpan(columns.Time)).Contains((byte)':'))
            {
                hours = 0;
                return false;
            }

            form = TimeForm.ByValue;
        }

        var cell = LogCells.Bare(csv.GetSpan(columns.Time));
        if (form == TimeForm.ByValue) form = FormOf(cell, csv, line);
        return form switch
        {
            TimeForm.Timestamp when columns.Date is { } date => times.TryStamp(LogCells.Bare(csv.GetSpan(date)), cell, out hours),
            TimeForm.Timestamp => times.TryStamp(cell, default, out hours),
            TimeForm.Clock => times.TryClock(cell, out hours),
            TimeForm.ByValue => (hours = 0) > 0,
            _ => TryTime(csv, line, out hours),
        };
    }

    private TimeForm FormOf(ReadOnlySpan<byte> cell, CsvReader csv, int line)
    {
        if (columns.Date is not null) return TimeForm.Timestamp;
        if (LogStamp.TryParse(cell, default, out _)) return TimeForm.Timestamp;
        if (LogCells.TryClock(cell, out _)) return TimeForm.Clock;
        if (!TryNumber(csv, line, out var value)) return TimeForm.ByValue;
        return LogTimes.FormOf(value) is var found && found != TimeForm.ByValue ? found : throw new RefusedException(new Finding(
            // Every line would say the same.
            FindingCodes.LogTimeUnitMissing, CsvLogReader.FieldOf(line), Encoding.UTF8.GetString(cell),
            Message.Of("logs.time-unit-missing"),
            [Message.Of("logs.time-header"), Message.Verbatim("hh:mm:ss"), Message.Of("logs.iso-timestamps")],
            Message.Of("logs.name-time-column")));
    }

    private bool TryNumber(CsvReader csv, int line, out double value)
    {
        var cell = csv.GetSpan(columns.Time);
        if (LogCells.TryPlain(cell, out value, out var decimals) && (decimals < 0 || marks.PointIsDecimal)) return true;
        value = 0;
        if (!LogNumber.TryParse(LogCells.Bare(cell), out var number) || number.Unit != ' ') return false;
        value = number.Value;
        if (number.Mark != NumberMark.None && samples is not null)
        {
            marks.Note(TimeColumn, number, double.MaxValue, samples[0]?.Count ?? 0, line, LogCells.Bare(cell));
        }
        else if (number.Mark != NumberMark.None)
        {
            marks.Note(TimeColumn, number, double.MaxValue, 0, line, LogCells.Bare(cell));
        }

        return true;
    }

    // Times first: whether a temperature can follow another depends on them.
    private void SettleMarks(List<HeatWarning> warnings)
    {
        if (!times.ArePacked && samples![0] is { } first)
        {
            marks.Settle(
                TimeColumn, first.HoursAt, first.Count, (a, b, _) => b >= a,
                i =>
                {
                    foreach (var zone in samples) zone?.ScaleHours(i, LogNumber.Thousand);
                },
                warnings);
        }

        for (var zone = 0; zone < samples!.Length; zone++)
        {
            if (samples[zone] is not { } of) continue;
            marks.Settle(
                zone, of.DegreesAt, of.Count,
                (a, b, at) => CanFollow(of, a, b, at),
                i => of.ScaleDegrees(i, LogNumber.Thousand), warnings);
        }
    }

    private bool CanFollow(LogSamples of, double a, double b, int at)
    {
        // Dates are not hours yet; a log of dates has a sample each few minutes.
        var hours = times.ArePacked ? 0.1 : of.HoursAt(at) - of.HoursAt(at - 1);
        var factor = of.Fahrenheit ? 1.8 : 1;
        return Math.Abs(b - a) <= factor * Math.Max(30, ExcursionFilter.FastestKelvinPerHour * hours);
    }
}
