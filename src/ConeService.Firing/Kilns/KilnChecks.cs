using ConeService.Data;

namespace ConeService.Firing.Kilns;

/// <summary>Checks of single numbers, and of members that rule each other out. Units mistaken for others are what they mostly catch.</summary>
internal static class KilnChecks
{
    /// <summary>Age beyond which elements fail rather than fade; 1 is due for replacement.</summary>
    public const double OldestElements = 2;

    public static void Run(KilnFindings findings, StatedKiln kiln, KilnLoad load, string kilnField, string loadField)
    {
        findings.InRange($"{kilnField}/volumeLitres", kiln.VolumeLitres, 5, 5000, "L", "Litres, not cubic metres or cubic feet: 1 cubic foot is 28.3 L.");
        findings.InRange($"{kilnField}/wall/thicknessMillimetres", kiln.Wall?.ThicknessMillimetres, 10, 500, "mm", "Millimetres, not inches: 3 inches are 76 mm.");
        findings.InRange($"{kilnField}/kilowatts", kiln.Kilowatts, 0.3, 2000, "kW");
        findings.InRange($"{kilnField}/voltsInstalled", kiln.VoltsInstalled, 50, 1000, "V");
        findings.InRange($"{kilnField}/voltsAsWired", kiln.VoltsAsWired, 50, 1000, "V");
        findings.InRange($"{kilnField}/elementAge", kiln.ElementAge, 0, OldestElements, "(0 new, 1 due for replacement)");
        findings.InRange($"{kilnField}/elementFirings", kiln.ElementFirings, 0, 5000, "firings");
        findings.InRange($"{kilnField}/maxCelsius", kiln.MaxCelsius, 500, 1800, "°C");
        findings.InRange($"{kilnField}/leakFactor", kiln.LeakFactor, 0, 20, "");
        findings.InRange($"{kilnField}/fuelFactor", kiln.FuelFactor, 1, 10, "");
        findings.InRange($"{loadField}/thickestMillimetres", load.ThickestMillimetres, 1, 400, "mm");
        if (kiln is { ElementAge: not null, ElementFirings: not null })
            findings.NotApplicable($"{kilnField}/elementFirings", KilnFindings.Text(kiln.ElementFirings), "The age of the elements is stated twice; send elementAge or elementFirings.");
        if (kiln.Heat == KilnHeat.Electric) Unfit("fuelFactor", kiln.FuelFactor, "An electric kiln burns no fuel.");
        if (kiln.Heat == KilnHeat.Electric) return;
        Unfit("voltsInstalled", kiln.VoltsInstalled, "A gas kiln has no elements.");
        Unfit("voltsAsWired", kiln.VoltsAsWired, "A gas kiln has no elements.");
        Unfit("elementAge", kiln.ElementAge, "A gas kiln has no elements.");
        Unfit("elementFirings", kiln.ElementFirings, "A gas kiln has no elements.");

        void Unfit(string member, double? value, string why)
        {
            if (value is not null) findings.NotApplicable($"{kilnField}/{member}", KilnFindings.Text(value), why);
        }
    }
}
