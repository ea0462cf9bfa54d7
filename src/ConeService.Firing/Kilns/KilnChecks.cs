using ConeService.Contract.Kilns;
using ConeService.Contract.Requests;
using ConeService.Contract.Schedules;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing.Kilns;

/// <summary>
/// Checks of single numbers, and of members that rule each other out. Units mistaken for others are what they mostly catch.
/// </summary>
internal static class KilnChecks
{
    /// <summary>Age beyond which elements fail rather than fade; 1 is due for replacement.</summary>
    public static double OldestElements => Of(nameof(Kiln.ElementAge)).High;

    /// <summary>What a maker can allow, °C.</summary>
    public static Bounds MaxCelsius { get; } = new(500, 1800);

    /// <summary>
    /// Voltage over that of the elements up to which a kiln is reckoned with: power goes with the square, so 6 % are an eighth more heat
    /// in elements, relays and wiring; 230 V elements on a 240 V supply are 4 %. A judgement.
    /// </summary>
    public const double MostOvervoltage = 1.06;

    private static int MostFirings => (int)Of(nameof(Kiln.ElementFirings)).High;

    public static void Run(KilnFindings findings, StatedKiln kiln, KilnLoad load, string kilnField, string loadField)
    {
        findings.InRange(
            $"{kilnField}/volumeLitres", kiln.VolumeLitres, Of(nameof(Kiln.VolumeLitres)), "L", Message.Of("kilns.litres-expected"));
        findings.InRange(
            $"{kilnField}/wall/thicknessMillimetres", kiln.Wall?.ThicknessMillimetres,
            Bounds.Of<KilnWall>(nameof(KilnWall.ThicknessMillimetres)), "mm",
            Message.Of("kilns.millimetres-expected"));
        findings.InRange($"{kilnField}/kilowatts", kiln.Kilowatts, Of(nameof(Kiln.Kilowatts)), "kW");
        findings.InRange($"{kilnField}/voltsInstalled", kiln.VoltsInstalled, Of(nameof(Kiln.VoltsInstalled)), "V");
        findings.InRange($"{kilnField}/voltsAsWired", kiln.VoltsAsWired, Of(nameof(Kiln.VoltsAsWired)), "V");
        if (kiln is { VoltsInstalled: { } installed and > 0, VoltsAsWired: { } wired } && wired > installed * MostOvervoltage)
            findings.Overvoltage($"{kilnField}/voltsAsWired", wired, installed, MostOvervoltage);
        findings.InRange(
            $"{kilnField}/elementAge", kiln.ElementAge, Of(nameof(Kiln.ElementAge)),
            Message.Of("kilns.range-of-element-age", ("low", 0), ("high", OldestElements)));
        findings.InRange(
            $"{kilnField}/elementFirings", kiln.ElementFirings, Of(nameof(Kiln.ElementFirings)),
            Message.Of("kilns.range-of-firings", ("low", 0), ("high", MostFirings)));
        findings.InRange($"{kilnField}/maxTemperature", kiln.MaxCelsius, MaxCelsius, "°C");
        findings.InRange($"{kilnField}/leakFactor", kiln.LeakFactor, Of(nameof(Kiln.LeakFactor)), "");
        findings.InRange($"{kilnField}/fuelFactor", kiln.FuelFactor, Of(nameof(Kiln.FuelFactor)), "");
        findings.InRange(
            $"{loadField}/thickestMillimetres", load.ThickestMillimetres, Bounds.Of<FitLoad>(nameof(FitLoad.ThickestMillimetres)), "mm");
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

    private static Bounds Of(string member) => Bounds.Of<Kiln>(member);
}
