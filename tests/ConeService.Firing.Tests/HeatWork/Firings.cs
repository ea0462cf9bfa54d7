using ConeService.Contract.Cones;
using ConeService.Firing.Cones;
using ConeService.Firing.HeatWork;
using ConeService.Firing.Tests.Support;

namespace ConeService.Firing.Tests.HeatWork;

/// <summary>Short names for the programmes that the tests fire.</summary>
internal static class Firings
{
    public const double Zero = 273.15;

    public static BendingCurve Curve(string cone) => Reference.Charts.Default.Find(Cone.Parse(cone))!.Curve(new(60))!;

    public static HeatProgramme Ramp(double rate, double celsius, double holdMinutes = 0, CoolDown? cooling = null) =>
        new(20 + Zero, [new(rate, celsius + Zero, holdMinutes / 60)], 200, cooling);

    public static CoolDown Down(double rate) => new CoolDown.AtRate(rate, 20 + Zero);

    public static HeatHistory History(params (double Hours, double Celsius)[] points) =>
        new(points.Select(p => new HeatPoint(p.Hours, p.Celsius + Zero)).ToArray());
}
