using System.Collections.Frozen;
using ConeService.Contract.Cones;
using ConeService.Firing.Cones;

namespace ConeService.Firing.Materials;

/// <summary>The marks of every cone on the potter's scale 022 … 14, with its half cones and without Seger letters.</summary>
internal sealed class ConeMarks
{
    private readonly FrozenDictionary<Cone, ConeMark> marks;

    /// <summary>Builds the marks; distances are those of <see cref="ConeScale.WholeSteps"/>.</summary>
    public ConeMarks(ConeScale scale)
    {
        var first = scale.Cones.First(c => scale.Row(c).WholeStep == 0);
        marks = scale.Cones.Where(c => !c.HasLetter && scale.WholeSteps(first, c) is not null)
            .Where(c => c.Position <= 14 && c >= first)
            .ToFrozenDictionary(c => c, c => Mark(c, scale.WholeSteps(first, c)!.Value, scale.Row(c).WholeStep is null));
        foreach (var (cone, mark) in marks) mark.MixUp = marks.GetValueOrDefault(cone.MixUp);
        Whole = [.. marks.Values.Where(m => m.Order % 2 == 0).OrderBy(m => m.Order)];
    }

    /// <summary>The whole cones 022 … 14; the place of each is its step.</summary>
    public IReadOnlyList<ConeMark> Whole { get; }

    /// <summary>The mark of a cone; null outside the scale.</summary>
    public ConeMark? Find(Cone cone) => marks.GetValueOrDefault(cone);

    /// <summary>The mark of a cone of the data package, which keeps to the scale.</summary>
    public ConeMark Of(string cone) => marks[Cone.Parse(cone)];

    private static ConeMark Mark(Cone cone, int step, bool half) => new(cone.ToString(), (2 * step) + (half ? 1 : 0), step);
}
