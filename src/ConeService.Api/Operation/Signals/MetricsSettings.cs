using System.Globalization;

namespace ConeService.Api.Operation.Signals;

/// <summary>Whether and where metrics are shown: section <c>ConeService:Metrics</c>.</summary>
/// <param name="Enabled">At /metrics of the service.</param>
/// <param name="Port">At /metrics of a port of their own; null: none.</param>
internal sealed record MetricsSettings(bool Enabled, int? Port)
{
    private const string Section = "ConeService:Metrics:";

    /// <summary>Reads the section.</summary>
    /// <exception cref="InvalidSettingException">A value is none.</exception>
    public static MetricsSettings Read(IConfiguration configuration) =>
        new(Switch(configuration[Section + "Enabled"]), Number(configuration[Section + "Port"]));

    private static bool Switch(string? text) => text is { Length: > 0 } && (bool.TryParse(text, out var on)
        ? on
        : throw new InvalidSettingException($"{Section}Enabled must be true or false, not “{text}”."));

    private static int? Number(string? text) => text is not { Length: > 0 }
        ? null
        : int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var port) && port is > 0 and < 65536
            ? port
            : throw new InvalidSettingException($"{Section}Port must be a port, 1 to 65535, not “{text}”.");
}
