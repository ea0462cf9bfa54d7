using System.Text;
using ConeService.Contract.Answers;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;

namespace ConeService.Firing.HeatWork.Logs;

/// <summary>
/// Cells of a log that hold no reading: empty ones and words such as an error code. Each text is told once, with its count. For one
/// column only.
/// </summary>
internal sealed class LogGaps
{
    private const int MostTexts = 20;

    private readonly Dictionary<string, (int Line, int Count)> texts = [];

    /// <summary>How many cells there are.</summary>
    public int Count { get; private set; }

    /// <summary>Takes note of a cell.</summary>
    public void Add(ReadOnlySpan<byte> cell, int line)
    {
        Count++;
        var text = Encoding.UTF8.GetString(cell.Length > 60 ? cell[..60] : cell);
        if (texts.TryGetValue(text, out var seen)) texts[text] = seen with { Count = seen.Count + 1 };
        else if (texts.Count < MostTexts) texts[text] = (line, 1);
    }

    /// <summary>A finding for each text.</summary>
    /// <param name="code">Code of the finding.</param>
    /// <param name="say">The sentence for a text and its count.</param>
    /// <param name="example">What could stand there.</param>
    public IEnumerable<Finding> Findings(string code, Func<string, int, Message> say, string example) => texts.Select(t =>
        AmbiguousNumber(t.Key, t.Value.Line) ?? new Finding(
            code, CsvLogReader.FieldOf(t.Value.Line), t.Key, say(t.Key, t.Value.Count), Message.Verbatim([example]),
            t.Key.Length == 0 ? Message.Of("logs.line-cut-short") : null));

    /// <summary>The warning on readings that are missing.</summary>
    public HeatWarning Warning() => new(
        WarningCodes.ReadingsMissing,
        Message.Of(
            "logs.readings-missing", ("count", Count),
            ("texts", texts.Select(t => t.Key.Length == 0
                ? Message.Of("logs.blank-cells", ("count", t.Value.Count))
                : Message.Of("logs.word-cells", ("count", t.Value.Count), ("text", t.Key))).ToArray())),
        Count, []);

    private static Finding? AmbiguousNumber(string text, int line) =>
        Contract.Quantities.AmbiguousNumber.Finding(CsvLogReader.FieldOf(line), text);
}
