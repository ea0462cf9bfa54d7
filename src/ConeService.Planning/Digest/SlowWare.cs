using System.Globalization;
using ConeService.Contract.Loads;
using ConeService.Contract.Schedules;
using ConeService.Data;
using ConeService.Firing.Kilns;

namespace ConeService.Planning.Digest;

/// <summary>
/// What of ware makes a firing slow: the dampest and the thickest of it. A firing is fitted to the worst that is in it.
/// </summary>
/// <param name="Dryness">How dry the dampest is.</param>
/// <param name="ThickestMillimetres">The thickest wall, mm; null where nobody told of one: what the schedule was made for.</param>
internal readonly record struct SlowWare(Dryness Dryness, double? ThickestMillimetres)
{
    // As the fit takes walls.
    private const double Thinnest = 1;
    private const double Thickest = 400;

    /// <summary>Bone-dry ware of whose walls nobody told.</summary>
    public static SlowWare Usual { get; }

    /// <summary>A piece; fired ware is dry.</summary>
    public static SlowWare Of(PieceRequest piece) => new(
        EnumWords.TryRead<Dryness>(piece.State.Text, out var dryness) ? dryness : Dryness.BoneDry,
        double.TryParse(piece.ThickestMillimetres.Text, NumberStyles.Float, CultureInfo.InvariantCulture, out var wall) && wall >= Thinnest
            ? Math.Min(wall, Thickest)
            : null);

    /// <summary>The dampest and the thickest of both.</summary>
    public SlowWare With(SlowWare other) => new(
        Dryness > other.Dryness ? Dryness : other.Dryness,
        ThickestMillimetres is null || other.ThickestMillimetres > ThickestMillimetres
            ? other.ThickestMillimetres
            : ThickestMillimetres);

    /// <summary>Whether a firing for this is slow enough for other ware.</summary>
    public bool Covers(SlowWare other) => With(other) == this;

    /// <summary>As the fit takes it; null where it takes what the schedule was made for.</summary>
    public FitLoad? AsLoad() => this == Usual ? null : new(
        ThickestMillimetres: ThickestMillimetres, Dryness: Dryness == Dryness.BoneDry ? null : EnumWords.Word(Dryness));
}
