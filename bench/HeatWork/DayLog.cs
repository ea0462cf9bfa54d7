using System.Buffers;
using System.Globalization;
using System.IO.Pipelines;
using System.Text;
using ConeService.Firing.HeatWork.Logs;

namespace ConeService.Bench.HeatWork;

/// <summary>An invented day in the life of a kiln, one sample a second.</summary>
internal static class DayLog
{
    private const int Samples = 86_400;

    public static byte[] Csv() => Write("seconds,temperature_c", s => s.ToString(CultureInfo.InvariantCulture));

    /// <summary>The same with dates as spreadsheets write them: 03/28/2026 08:00:00 PM.</summary>
    public static byte[] OddDates()
    {
        var start = new DateTime(2026, 3, 26, 20, 0, 0, DateTimeKind.Unspecified);
        return Write("time,temperature_c", s => start.AddSeconds(s).ToString("MM/dd/yyyy hh:mm:ss tt", CultureInfo.InvariantCulture));
    }

    private static byte[] Write(string header, Func<int, string> time)
    {
        var text = new StringBuilder(header).Append('\n');
        for (var s = 0; s < Samples; s++)
        {
            var hours = s / 3600.0;
            var celsius = hours < 11 ? 20 + (1100 * hours / 11)
                : hours < 13.2 ? 1120 + (46 * (hours - 11))
                : 20 + (1201 * Math.Exp(-(hours - 13.2) / 5.5));
            text.Append(CultureInfo.InvariantCulture, $"{time(s)},{celsius + (0.4 * Math.Sin(s * 7.7)):0.00}\n");
        }

        return Encoding.UTF8.GetBytes(text.ToString());
    }

    /// <summary>Reads it as the service does, without the network.</summary>
    public static async Task<CleanLog> ReadAsync(byte[] csv) =>
        await new CsvLogReader(null, new()).ReadAsync(PipeReader.Create(new ReadOnlySequence<byte>(csv)), CancellationToken.None);
}
