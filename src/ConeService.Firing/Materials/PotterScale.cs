using System.Collections.Frozen;
using ConeService.Contract.Cones;
using ConeService.Firing.Cones;

namespace ConeService.Firing.Materials;

/// <summary>The potter's scale: every cone 022 … 14, with its half cones and without Seger letters.</summary>
internal sealed class PotterScale
{
    private readonly FrozenDictionary<Cone, PotterCone> cones;

    /// <summary>Builds the scale; distances are those of <see cref="ConeScale.WholeSteps"/>.</summary>
    public PotterScale(ConeScale scale)
    {
        var first = scale.Cones.First(c => scale.Row(c).WholeStep == 0);
        cones = scale.Cones.Where(c => !c.HasLetter && scale.WholeSteps(first, c) is not null)
            .Where(c => c.Position <= 14 && c >= first)
            .ToFrozenDictionary(c => c, c => Counted(c, scale.WholeSteps(first, c)!.Value, scale.Row(c).WholeStep is null));
        foreach (var (cone, counted) in cones) counted.MixUp = cones.GetValueOrDefault(cone.MixUp);
        Whole = [.. cones.Values.Where(c => c.Order % 2 == 0).OrderBy(c => c.Order)];
    }

    /// <summary>The whole cones 022 … 14; the place of each is its step.</summary>
    public IReadOnlyList<PotterCone> Whole { get; }

    /// <summary>A cone, ready to be counted with; null outside the scale.</summary>
    public PotterCone? Find(Cone cone) => cones.GetValueOrDefault(cone);

    /// <summary>A cone of the data package, which keeps to the scale.</summary>
    public PotterCone Of(string cone) => cones[Cone.Parse(cone)];

    private static PotterCone Counted(Cone cone, int step, bool half) => new(cone.ToString(), (2 * step) + (half ? 1 : 0), step);
}
