namespace ConeService.Api.Commands;

/// <summary>The verbs of the host besides serving; each returns an exit code.</summary>
internal static class CommandLine
{
    /// <summary>Runs the verb named first; null when the arguments name none and the service should start.</summary>
    public static async Task<int?> RunAsync(string[] args) => args.FirstOrDefault() switch
    {
        "check-data" => CheckData.Run(args[1..], Console.Out),
        "data-dictionary" => WriteDataDictionary.Run(args[1..], Console.Out),
        "probe" => await Probe.RunAsync(args[1..]),
        _ => null,
    };
}
