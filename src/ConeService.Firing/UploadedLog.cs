using ConeService.Contract.Answers;
using ConeService.Contract.HeatWork;
using ConeService.Firing.HeatWork;
using ConeService.Firing.HeatWork.Logs;

namespace ConeService.Firing;

/// <summary>A log that comes line by line; only its samples are kept. For one caller at a time.</summary>
public sealed class UploadedLog
{
    private readonly HeatWorkCalculator calculator;
    private readonly HeatSettings settings;
    private readonly LogText text;
    private readonly bool fahrenheit;

    internal UploadedLog(HeatWorkCalculator calculator, HeatSettings settings, LogText text, bool fahrenheit) =>
        (this.calculator, this.settings, this.text, this.fahrenheit) = (calculator, settings, text, fahrenheit);

    /// <summary>Longest line, bytes.</summary>
    public static int LongestLine => LogText.LongestLine;

    /// <summary>True when so much is wrong that sending more is of no use.</summary>
    public bool IsHopeless => text.IsHopeless;

    /// <summary>Takes a line without its line end, UTF-8.</summary>
    /// <exception cref="RefusedException">The header can't be used.</exception>
    public void Line(ReadOnlySpan<byte> line) => text.Line(line);

    /// <summary>Follows the firing, after the last line.</summary>
    /// <exception cref="RefusedException">The log can't be used; carries every finding.</exception>
    public Followed<HeatWorkAnswer> Follow() => HeatWorkReference.Show(calculator.Answer(text.Clean(), settings, fahrenheit));
}
