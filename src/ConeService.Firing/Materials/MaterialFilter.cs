using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Data;
using ConeService.Firing.Cones;
using ConeService.Firing.Reading;

namespace ConeService.Firing.Materials;

/// <summary>The filters of a material list.</summary>
/// <param name="Cone">A cone of the scale; null for all.</param>
/// <param name="Atmosphere">An atmosphere; null for all.</param>
internal sealed record MaterialFilter(Cone? Cone, Atmosphere? Atmosphere)
{
    /// <summary>Reads the filters.</summary>
    /// <exception cref="RefusedException">A filter is no cone, or no atmosphere; every finding is in it.</exception>
    public static MaterialFilter Read(ConeScale scale, string? cone, string? atmosphere)
    {
        var findings = new List<Finding>();
        Cone? read = null;
        if (cone is not null)
        {
            if (scale.TryRead(cone, "cone", out var found, out var finding)) read = found;
            else findings.Add(finding!);
        }

        Atmosphere? word = null;
        if (atmosphere is not null)
        {
            if (EnumWords.TryRead(atmosphere, Atmospheres.OfFirings, out var found)) word = found;
            else findings.Add(UnknownWord.Of(atmosphere, "atmosphere", "atmosphere", Atmospheres.OfFirings));
        }

        return findings.Count == 0 ? new(read, word) : throw new RefusedException(findings);
    }
}
