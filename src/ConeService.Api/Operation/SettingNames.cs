using ConeService.Contract.Answers;

namespace ConeService.Api.Operation;

/// <summary>
/// The settings that there are. A misspelt one would be ignored without a word, and the service run on other data, or without its prefix;
/// so it stops the start.
/// </summary>
internal static class SettingNames
{
    /// <summary>The section of all settings of this service.</summary>
    public const string Section = "ConeService";

    private const string Number = "#";

    /// <summary>Each setting with what it says; <c>#</c> stands for a number from 0.</summary>
    public static readonly IReadOnlyList<(string Name, string Says)> All =
    [
        ("ConeService:Data:Path", "directory or zip archive of a data package in place of the embedded one"),
        ("ConeService:Data:Overlays:#", "directories or zip archives of studio overlays, in order"),
        ("ConeService:PublicBase", "address of the root as callers see it, such as https://studio.example/cones"),
        ("ConeService:PathBase", "only the path before every address, such as /cones"),
        ("ConeService:Proxies:#", "addresses or networks of proxies whose X-Forwarded headers are believed"),
        ("ConeService:Metrics:Enabled", "true: Prometheus text at /metrics"),
        ("ConeService:Metrics:Port", "Prometheus text at /metrics on this port instead, beside the service"),
        ("ConeService:Computations:AtOnce", "computations that run at the same time; left out: one for each processor, at least 2"),
        ("ConeService:Computations:Waiting", "computations that may wait for one to end before 503 is answered; left out: 64"),
        ("ConeService:Computations:SecondsAtMost", "a request that computes longer is given up with 503; left out: 20"),
        ("ConeService:Computations:Solver", "false: plans are made without the native solver; left out: true"),
    ];

    // What else the command line takes: the framework's own.
    private static readonly string[] Options =
        ["urls", "http_ports", "https_ports", "environment", "contentRoot", "webRoot", "applicationName", "AllowedHosts"];

    private static readonly string[] Sections = [Section, "Logging", "Kestrel"];

    /// <summary>Refuses what is none of the settings.</summary>
    /// <exception cref="InvalidSettingException">The first one found, with those that are near.</exception>
    public static void Check(IConfiguration configuration)
    {
        foreach (var (key, value) in configuration.GetSection(Section).AsEnumerable())
        {
            // An empty list of appsettings.json is an empty text.
            if (string.IsNullOrEmpty(value) || key.Equals(Section, StringComparison.OrdinalIgnoreCase)) continue;
            var name = string.Join(':', key.Split(':').Select(p => int.TryParse(p, out _) ? Number : p));
            if (!All.Any(s => s.Name.Equals(name, StringComparison.OrdinalIgnoreCase))) throw Unknown(key, All.Select(s => s.Name));
        }

        // ConService__Data__Path would be a section that nobody reads.
        foreach (var section in configuration.GetChildren().Where(s => s.GetChildren().Any() && !IsKnown(s.Key)))
        {
            if (NearMatches.Find(section.Key, Sections) is [_, ..]) throw Unknown(section.Key, Sections);
        }
    }

    /// <summary>Refuses options of the command line that nothing reads.</summary>
    /// <exception cref="InvalidSettingException">The first one found, with those that are near.</exception>
    public static void CheckOptions(IEnumerable<string> args)
    {
        foreach (var option in args.Where(a => a.StartsWith("--", StringComparison.Ordinal)))
        {
            var key = option[2..].Split('=', 2)[0];
            var isKnown = IsKnown(key.Split(':')[0])
                || Options.Contains(key, StringComparer.OrdinalIgnoreCase)
                || key.StartsWith("OTEL_", StringComparison.OrdinalIgnoreCase);
            if (!isKnown) throw Unknown("--" + key, [.. Options.Select(o => "--" + o), .. All.Select(s => "--" + s.Name)]);
        }
    }

    private static bool IsKnown(string section) => Sections.Contains(section, StringComparer.OrdinalIgnoreCase);

    private static InvalidSettingException Unknown(string key, IEnumerable<string> known)
    {
        var near = NearMatches.Find(key, known);
        return new($"There is no setting “{key}”."
            + (near.Count > 0 ? $" Probably {string.Join(" or ", near)}." : " --help names them all."));
    }
}
