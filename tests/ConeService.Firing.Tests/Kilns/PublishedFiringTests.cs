using ConeService.Firing.Tests.Support;

namespace ConeService.Firing.Tests.Kilns;

public class PublishedFiringTests
{
    public static TheoryData<string> Firings => [.. CsvFile.Read("Vectors/kiln-firings.csv").Select(r => r["id"])];

    public static TheoryData<string> Prototyped => [.. CsvFile.Read("Vectors/kiln-prototype.csv").Select(r => r["id"])];

    // Source: tests/Vectors/kiln-firings.csv. A range is met when the prediction lies within the tolerance of it.
    [Theory]
    [MemberData(nameof(Firings))]
    public void A_published_firing_is_met_within_its_tolerance(string id)
    {
        var (row, prediction) = (KilnCases.Row(id), KilnCases.Fire(id));
        Assert.True(prediction.Completed);
        var tolerance = KilnCases.Number(row["relative_tolerance"]);
        Assert.InRange(
            prediction.Energy.TotalKilowattHours, KilnCases.Number(row["kilowatt_hours_low"]) * (1 - tolerance),
            KilnCases.Number(row["kilowatt_hours_high"]) * (1 + tolerance));
        if (row["hours_low"] is { Length: > 0 } low)
            Assert.InRange(prediction.HoursToPeak, KilnCases.Number(low), KilnCases.Number(row["hours_high"]));
    }

    // Source: tests/Vectors/kiln-prototype.csv, written in another language with another rule and four times the layers.
    [Theory]
    [MemberData(nameof(Prototyped))]
    public void Another_solver_of_the_same_equations_agrees(string id)
    {
        var (row, energy) = (CsvFile.Read("Vectors/kiln-prototype.csv").Single(r => r["id"] == id), KilnCases.Fire(id).Energy);
        var tolerance = KilnCases.Number(row["relative_tolerance"]);
        Assert.Equal(1, energy.TotalKilowattHours / KilnCases.Number(row["kilowatt_hours"]), tolerance);
        Assert.Equal(1, energy.SurfaceKilowattHours / KilnCases.Number(row["surface_kilowatt_hours"]), tolerance);
        Assert.Equal(1, energy.LeakKilowattHours / KilnCases.Number(row["leak_kilowatt_hours"]), tolerance);
    }
}
