using System.Globalization;

namespace ConeService.Api.Operation.Work;

/// <summary>How much may be computed at once: section <c>ConeService:Computations</c>.</summary>
/// <param name="AtOnce">Computations at the same time.</param>
/// <param name="Waiting">Computations that may wait.</param>
/// <param name="SecondsAtMost">When one is given up, s.</param>
/// <param name="Solver">False: plans are made without the native solver.</param>
internal sealed record ComputationSettings(int AtOnce, int Waiting, int SecondsAtMost, bool Solver = true)
{
    private const string Section = "ConeService:Computations:";

    /// <summary>Reads the section.</summary>
    /// <exception cref="InvalidSettingException">A value is no whole number, or too small, or neither true nor false.</exception>
    public static ComputationSettings Read(IConfiguration configuration) => new(
        Number(configuration, "AtOnce", 1, Math.Max(2, Environment.ProcessorCount)),
        Number(configuration, "Waiting", 0, 64),
        Number(configuration, "SecondsAtMost", 1, 20),
        Switch(configuration, "Solver"));

    private static int Number(IConfiguration configuration, string name, int least, int otherwise) =>
        configuration[Section + name] is not { Length: > 0 } text ? otherwise
        : int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number >= least ? number
        : throw new InvalidSettingException($"{Section}{name} must be a whole number, {least} or more, not “{text}”.");

    private static bool Switch(IConfiguration configuration, string name) =>
        configuration[Section + name] is not { Length: > 0 } text ? true
        : bool.TryParse(text, out var on) ? on
        : throw new InvalidSettingException($"{Section}{name} must be true or false, not “{text}”.");
}
