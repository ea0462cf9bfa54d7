using ConeService.Data;
using ConeService.Firing.Answers;

namespace ConeService.Firing.Kilns;

/// <summary>The lumped kiln: chamber, load, a wall in eight layers. Equations, defaults and limits: docs/kilns.md. Thread-safe; make one per dataset.</summary>
/// <param name="dataset">Where materials and defaults come from.</param>
public sealed class KilnModel(Dataset dataset)
{
    /// <summary>A chamber less than this behind the set-point follows, K.</summary>
    public const double FollowingKelvin = 10;

    /// <summary>A kiln is opened below this, °C.</summary>
    public const double OpeningCelsius = 95;

    /// <summary>Firings are predicted over at most this long, h.</summary>
    public const double LongestHours = 400;

    /// <summary>Climbing more slowly than this at full power is a stall, °C/h.</summary>
    public const double StallCelsiusPerHour = 5;

    /// <summary>Version of the data behind the answers.</summary>
    public string DatasetVersion => dataset.VersionId;

    /// <summary>Decides every parameter.</summary>
    /// <param name="kiln">The kiln.</param>
    /// <param name="load">The load; null: all by volume.</param>
    /// <param name="kilnField">JSON pointer of the kiln, for findings.</param>
    /// <param name="loadField">JSON pointer of the load, for findings.</param>
    /// <exception cref="RefusedException">Something is absurd; every finding is named.</exception>
    public KilnSetup Resolve(KilnInput kiln, KilnLoad? load = null, string kilnField = "/kiln", string loadField = "/load") => throw new NotImplementedException();

    /// <summary>Fires the plan.</summary>
    /// <param name="setup">Kiln and load.</param>
    /// <param name="plan">The programme; temperatures between −20 and 1400 °C.</param>
    /// <exception cref="ArgumentException">The plan has no segment, or a rate, target or hold that is not a sensible number; callers check theirs before.</exception>
    public KilnPrediction Predict(KilnSetup setup, FiringPlan plan) => throw new NotImplementedException();
}
