using System.Globalization;

namespace ConeService.Data;

/// <summary>A printed pair of °C and °F that disagree shows a slip in copying or in print.</summary>
internal sealed class FahrenheitMatchesCelsiusRule : IPackageRule
{
    // Both are printed as whole degrees, so each may be half a degree off.
    private const decimal ToleranceFahrenheit = 1;

    public IReadOnlyList<string> Reads => ["end-points"];

    public IEnumerable<PackageFault> Check(PackageContent content)
    {
        foreach (var at in content.Rows(TypedTables.EndPoints))
        {
            var converted = (at.Row.Celsius * 9 / 5) + 32;
            if (at.Row.Fahrenheit is { } printed && Math.Abs(converted - printed) > ToleranceFahrenheit)
                yield return at.Fault("fahrenheit", FaultRules.FahrenheitMatchesCelsius,
                    string.Create(CultureInfo.InvariantCulture,
                    $"is {printed} °F beside {at.Row.Celsius} °C, which is {converted} °F; they must agree within {ToleranceFahrenheit} "
                    + $"°F"));
        }
    }
}
