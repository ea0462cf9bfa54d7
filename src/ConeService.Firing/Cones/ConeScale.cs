using System.Collections.Frozen;
using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing.Cones;

/// <summary>Every cone of the data package in the order in which they go down, with neighbours and whole-cone steps.</summary>
internal sealed class ConeScale
{
    private readonly Cone[] numbered;
    private readonly Cone[] lettered;
    private readonly FrozenDictionary<Cone, ConeRow> rows;
    private readonly FrozenDictionary<string, Cone> asPrinted;

    /// <summary>Builds the scale from the cones table.</summary>
    public ConeScale(Dataset dataset)
    {
        rows = dataset.Cones.ToFrozenDictionary(row => Cone.Parse(row.Id));
        asPrinted = rows.Keys.ToFrozenDictionary(cone => cone.ToString(), StringComparer.Ordinal);
        numbered = [.. rows.Keys.Where(c => !c.HasLetter).Order()];
        lettered = [.. rows.Keys.Where(c => c.HasLetter).Order()];
        Cones = [.. rows.Keys.Order()];
    }

    /// <summary>All cones, ascending.</summary>
    public IReadOnlyList<Cone> Cones { get; }

    /// <summary>The row of a cone of this scale.</summary>
    public ConeRow Row(Cone cone) => rows[cone];

    /// <summary>True when some chart prints the cone.</summary>
    public bool Contains(Cone cone) => rows.ContainsKey(cone);

    /// <summary>The next lower cone of the same series, or null at the end.</summary>
    public Cone? Previous(Cone cone) => Neighbour(cone, -1);

    /// <summary>The next higher cone of the same series, or null at the end.</summary>
    public Cone? Next(Cone cone) => Neighbour(cone, +1);

    /// <summary>
    /// Distance in whole-cone steps, counted 022 … 01, 1 … 14 without the half cones; positive when
    /// <paramref name="to"/> is the hotter. A half cone counts as the whole cone below it. Null outside 022 … 14.
    /// </summary>
    public int? WholeSteps(Cone from, Cone to) => WholeStep(to) - WholeStep(from);

    private int? WholeStep(Cone cone)
    {
        if (rows.TryGetValue(cone, out var row) && row.WholeStep is { } step) return step;
        var below = numbered.LastOrDefault(c => c < cone && rows[c].Kind == "whole");
        return cone.HasLetter || below == default || rows[cone].Kind != "half" ? null : rows[below].WholeStep;
    }

    /// <summary>Reads a cone and checks that it exists; a finding names the nearest real cones.</summary>
    /// <param name="text">Any accepted spelling.</param>
    /// <param name="field">The parameter or JSON pointer, for the finding.</param>
    /// <param name="cone">The cone.</param>
    /// <param name="finding">What is wrong; null on success.</param>
    public bool TryRead(string? text, string field, out Cone cone, out Finding? finding)
    {
        // The spelling of the package itself, which most callers send, needs no pattern to be matched.
        finding = null;
        if (text is not null && asPrinted.TryGetValue(text, out cone)) return true;

        if (!ConeSpelling.TryRead(text, out cone, out finding))
        {
            finding = OnScale(finding! with { Field = field });
            return false;
        }

        if (Contains(cone)) return true;
        finding = new(
            FindingCodes.ConeUnknown, field, text, Message.Of("cones.unknown", ("cone", cone.ToString())),
            Nearest(cone), Missing(cone));
        return false;
    }

    // Between two cones both are near; beyond the ends of the scale none is, and what is allowed is the scale.
    private IReadOnlyList<Message> Nearest(Cone cone)
    {
        if (cone < numbered[0] || cone > numbered[^1]) return [WholeScale];
        return Message.Verbatim([numbered.Last(c => c < cone).ToString(), numbered.First(c => c > cone).ToString()]);
    }

    private Message WholeScale => Message.Of("answers.range", ("low", numbered[0].ToString()), ("high", numbered[^1].ToString()));

    // The spelling alone knows no scale: what it would allow and is no cone gives way to the scale.
    private Finding OnScale(Finding finding)
    {
        var there = finding.Allowed.Where(a => ConeSpelling.TryRead(a.ToString(), out var cone, out _) && Contains(cone)).ToList();
        if (there.Count > 0) return finding with { Allowed = there };
        return finding with { Allowed = [WholeScale], LikelyMistake = finding.Allowed.Count == 0 ? finding.LikelyMistake : null };
    }

    private Message? Missing(Cone cone) => cone switch
    {
        { HasLetter: true } => Message.Of("cones.letter-only"),
        { IsZeroCone: true, Position: < -22 } => Message.Of("cones.scale-begins"),
        { Position: 21 or 22 or 24 or 25 } => Message.Of("cones.not-made"),
        _ when Contains(cone.MixUp) => Message.Of("cones.exists", ("cone", cone.MixUp.ToString())),
        _ => null,
    };

    private Cone? Neighbour(Cone cone, int step)
    {
        var series = cone.HasLetter ? lettered : numbered;
        var index = Array.IndexOf(series, cone) + step;
        return index >= 0 && index < series.Length ? series[index] : null;
    }
}
