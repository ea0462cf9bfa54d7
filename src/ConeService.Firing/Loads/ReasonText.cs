using System.Globalization;
using System.Runtime.CompilerServices;

namespace ConeService.Firing.Loads;

/// <summary>A sentence that is put together only when somebody will read it.</summary>
[InterpolatedStringHandler]
internal ref struct ReasonText
{
    private DefaultInterpolatedStringHandler text;

    public ReasonText(int literalLength, int formattedCount, ReasonSink sink, out bool isRead)
    {
        isRead = !sink.Quiet;
        if (isRead) text = new(literalLength, formattedCount, CultureInfo.InvariantCulture);
    }

    public void AppendLiteral(string value) => text.AppendLiteral(value);

    public void AppendFormatted<T>(T value) => text.AppendFormatted(value);

    public string ToStringAndClear() => text.ToStringAndClear();
}
