using ConeService.Contract.Answers;

namespace ConeService.Api.Operation;

/// <summary>What the command line is told of itself.</summary>
internal static class Help
{
    private static readonly string[] Asks = ["--help", "-h", "-?", "help"];

    /// <summary>Whether help is asked for.</summary>
    public static bool IsAsked(string word) => Asks.Contains(word);

    /// <summary>The verbs and the settings.</summary>
    public static void Write(TextWriter output, IReadOnlyList<(string Usage, string Says)> verbs)
    {
        output.WriteLine($"ConeService {BuildInfo.Version} (commit {BuildInfo.Commit ?? "not known"})");
        output.WriteLine();
        output.WriteLine("Without a command it serves, with its embedded data, on http://localhost:5000.");
        output.WriteLine();
        output.WriteLine("Commands:");
        Table(output, verbs);
        output.WriteLine();
        output.WriteLine("Settings, as --Name=value, in appsettings.json, or in the environment with __ for each colon:");
        Table(output, [
            ("urls", "where it listens, such as http://localhost:5001 (ASPNETCORE_URLS)"), .. SettingNames.All,
            ("Logging:LogLevel:ConeService.Access", "Information: one line a request; Warning: none"),
            ("OTEL_EXPORTER_OTLP_ENDPOINT", "where OpenTelemetry sends metrics and traces; left out: nowhere"),
        ]);
    }

    /// <summary>A word that is no command.</summary>
    public static void Unknown(TextWriter output, string word, IEnumerable<string> verbs)
    {
        var near = NearMatches.Find(word, verbs);
        output.WriteLine($"There is no command “{word}”." + (near.Count > 0 ? $" Probably {near[0]}." : " --help names them all."));
    }

    private static void Table(TextWriter output, IReadOnlyList<(string Name, string Says)> rows)
    {
        foreach (var (name, says) in rows) output.WriteLine($"  {name,-38} {says}");
    }
}
