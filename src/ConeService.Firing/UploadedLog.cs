using System.IO.Pipelines;
using ConeService.Contract.Answers;
using ConeService.Contract.HeatWork;
using ConeService.Firing.HeatWork;
using ConeService.Firing.HeatWork.Logs;

namespace ConeService.Firing;

/// <summary>A log that comes by and by; only its samples are kept. For one caller at a time.</summary>
public sealed class UploadedLog
{
    private readonly HeatWorkCalculator calculator;
    private readonly HeatSettings settings;
    private readonly CsvLogReader log;
    private readonly bool fahrenheit;

    internal UploadedLog(HeatWorkCalculator calculator, HeatSettings settings, CsvLogReader log, bool fahrenheit) =>
        (this.calculator, this.settings, this.log, this.fahrenheit) = (calculator, settings, log, fahrenheit);

    /// <summary>The line that is read next, for who must say where an upload broke off.</summary>
    public int NextLine => log.NextLine;

    /// <summary>Reads the log to its end, or to where reading on is of no use, and follows the firing.</summary>
    /// <param name="body">The log as CSV, UTF-8.</param>
    /// <param name="cancel">Breaks off.</param>
    /// <exception cref="RefusedException">The log can't be used; carries every finding.</exception>
    public async Task<Followed<HeatWorkAnswer>> FollowAsync(PipeReader body, CancellationToken cancel) =>
        HeatWorkReference.Show(calculator.Answer(await log.ReadAsync(body, cancel), settings, fahrenheit));
}
