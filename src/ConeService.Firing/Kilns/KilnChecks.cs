using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing.Kilns;

/// <summary>
/// Checks of single numbers, and of members that rule each other out. Units mistaken for others are what they mostly catch.
/// </summary>
internal static class KilnChecks
{
    /// <summary>Age beyond which elements fail rather than fade; 1 is due for replacement.</summary>
    public const double OldestElements = 2;

    private const int MostFirings = 5000;

    public static void Run(KilnFindings findings, StatedKiln kiln, KilnLoad load, string kilnField, string loadField)
    {
        findings.InRange($"{kilnField}/volumeLitres", kiln.VolumeLitres, 5, 5000, "L", Message.Of("kilns.litres-expected"));
        findings.InRange(
            $"{kilnField}/wall/thicknessMillimetres", kiln.Wall?.ThicknessMillimetres, 10, 500, "mm",
            Message.Of("kilns.millimetres-expected"));
        findings.InRange($"{kilnField}/kilowatts", kiln.Kilowatts, 0.3, 2000, "kW");
        findings.InRange($"{kilnField}/voltsInstalled", kiln.VoltsInstalled, 50, 1000, "V");
        findings.InRange($"{kilnField}/voltsAsWired", kiln.VoltsAsWired, 50, 1000, "V");
        findings.InRange(
            $"{kilnField}/elementAge", kiln.ElementAge, 0, OldestElements,
            Message.Of("kilns.range-of-element-age", ("low", 0), ("high", OldestElements)));
        findings.InRange(
            $"{kilnField}/elementFirings", kiln.ElementFirings, 0, MostFirings,
            Message.Of("kilns.range-of-firings", ("low", 0), ("high", MostFirings)));
        findings.InRange($"{kilnField}/maxTemperature", kiln.MaxCelsius, 500, 1800, "°C");
        findings.InRange($"{kilnField}/leakFactor", kiln.LeakFactor, 0, 20, "");
        findings.InRange($"{kilnField}/fuelFactor", kiln.FuelFactor, 1, 10, "");
        findings.InRange($"{loadField}/thickestMillimetres", load.ThickestMillimetres, 1, 400, "mm");
        if (kiln is { ElementAge: not null, ElementFirings: not null })
            Unfit("elementFirings", kiln.ElementFirings, Message.Of("kilns.element-age-stated-twice"));
        if (kiln.Heat == KilnHeat.Electric)
        {
            Unfit("fuelFactor", kiln.FuelFactor, Message.Of("kilns.electric-burns-no-fuel"));
            return;
        }

        Unfit("voltsInstalled", kiln.VoltsInstalled, Message.Of("kilns.gas-has-no-elements"));
        Unfit("voltsAsWired", kiln.VoltsAsWired, Message.Of("kilns.gas-has-no-elements"));
        Unfit("elementAge", kiln.ElementAge, Message.Of("kilns.gas-has-no-elements"));
        Unfit("elementFirings", kiln.ElementFirings, Message.Of("kilns.gas-has-no-elements"));

        void Unfit(string member, double? value, Message why)
        {
            if (value is not null) findings.NotApplicable($"{kilnField}/{member}", KilnFindings.Text(value), why);
        }
    }
}
