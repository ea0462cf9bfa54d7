namespace ConeService.Firing.HeatWork;

/// <summary>
/// How far a cone leans at a progress: tan(χ/2) = tan(4°)^(1−I), χ from the 8° at which a cone is set to 90°.
/// Good to about 4 K of firing only: real cones are slower at first and quicker near the end.
/// </summary>
internal static class ConeBend
{
    /// <summary>What the angle can be trusted to, in degrees of a 60 °C/h firing, K.</summary>
    public const double ClaimKelvin = 4;

    private const double SetDegrees = 8;
    private static readonly double LogTanHalfSet = Math.Log(Math.Tan(SetDegrees / 2 * Math.PI / 180));

    /// <summary>The angle from upright, degrees: 8 when nothing has happened, 90 when the cone is down.</summary>
    public static double Degrees(double progress) =>
        2 * Math.Atan(Math.Exp(LogTanHalfSet * (1 - Math.Clamp(progress, 0, 1)))) * 180 / Math.PI;

    /// <summary>The angle as the hour that the cone points to on a clock face: 90° is six o'clock.</summary>
    public static double Clock(double degrees) => degrees / 15;

    /// <summary>The progress at which a cone leans by an angle, 0 at 8° and 1 at 90°.</summary>
    public static double Progress(double degrees) =>
        1 - (Math.Log(Math.Tan(Math.Clamp(degrees, SetDegrees, 90) / 2 * Math.PI / 180)) / LogTanHalfSet);
}
