using System.Diagnostics;

namespace ConeService.Api.Tests.Support;

/// <summary>Runs the built host as its users do: a process with arguments.</summary>
internal static class HostProcess
{
    public static async Task<(int ExitCode, string Output)> Run(params string[] arguments)
    {
        var start = new ProcessStartInfo("dotnet") { RedirectStandardOutput = true, RedirectStandardError = true };
        start.ArgumentList.Add(typeof(Program).Assembly.Location);
        foreach (var argument in arguments) start.ArgumentList.Add(argument);
        using var process = Process.Start(start)!;
        var output = process.StandardOutput.ReadToEndAsync(Api.Cancel);
        var error = process.StandardError.ReadToEndAsync(Api.Cancel);
        await process.WaitForExitAsync(Api.Cancel);
        return (process.ExitCode, await output + await error);
    }
}
