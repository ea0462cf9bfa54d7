using Microsoft.Extensions.Logging;

namespace ConeService.Api.Tests.Support;

/// <summary>Waits for what the service logs, so that no test sleeps.</summary>
internal sealed class LogWatch : ILoggerProvider, ILogger
{
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(30);

    private readonly SemaphoreSlim added = new(0);
    private readonly Queue<string> lines = new();

    /// <summary>Passes over lines until one says this, and gives it; fails after half a minute.</summary>
    public async Task<string> Until(string text)
    {
        while (true)
        {
            Assert.True(await added.WaitAsync(Longest, Api.Cancel), $"Nothing logged says “{text}”.");
            lock (lines)
            {
                var line = lines.Dequeue();
                if (line.Contains(text, StringComparison.Ordinal)) return line;
            }
        }
    }

    public ILogger CreateLogger(string categoryName) => this;

    public IDisposable? BeginScope<TState>(TState state)
        where TState : notnull => null;

    public bool IsEnabled(LogLevel logLevel) => true;

    public void Log<TState>(
        LogLevel logLevel, EventId eventId, TState state, Exception? exception, Func<TState, Exception?, string> formatter)
    {
        lock (lines) lines.Enqueue(formatter(state, exception));
        added.Release();
    }

    public void Dispose()
    {
    }
}
