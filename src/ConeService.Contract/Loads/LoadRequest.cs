using System.ComponentModel;
using System.ComponentModel.DataAnnotations;
using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.Kilns;
using ConeService.Contract.Requests;
using ConeService.Data;

namespace ConeService.Contract.Loads;

/// <summary>A load to be checked before it is fired.</summary>
/// <param name="Kiln">The kiln.</param>
/// <param name="Firing">The firing.</param>
/// <param name="Pieces">1 to 2,000 pieces.</param>
/// <param name="Ref">The caller's own name for the load; comes back as it is.</param>
/// <param name="Kilns">Other kilns of the studio: suggestions then come only from these and from the kiln of the load.</param>
/// <param name="Offered">Firings that the studio runs: suggestions then come only from these.</param>
[Needs(nameof(Kiln), nameof(Firing), nameof(Pieces))]
public sealed record LoadRequest(
    [property: Needs(nameof(Contract.Kilns.Kiln.MaxCone))] Kiln? Kiln,
    FiringRequest? Firing,
    [property: Items(1, LoadLimits.MostPieces)] IReadOnlyList<PieceRequest?>? Pieces,
    SentText Ref = default,
    [property: Items(0, LoadLimits.MostKilns)] IReadOnlyList<Kiln?>? Kilns = null,
    [property: Items(0, LoadLimits.MostOffered)] IReadOnlyList<OfferedFiringRequest?>? Offered = null);

/// <summary>A firing that a studio runs.</summary>
/// <param name="FiringKind">bisque, glaze, single, overglaze, raku, salt, soda, wood, pit or saggar.</param>
/// <param name="Cone">The cone it is fired to, as text.</param>
/// <param name="Atmosphere">oxidation, neutral or reduction.</param>
[Needs(nameof(FiringKind), nameof(Cone), nameof(Atmosphere))]
public sealed record OfferedFiringRequest(
    [property: WordsOf(typeof(FiringKind))] SentText FiringKind = default,
    [property: RegularExpression(ConeSpelling.Pattern)] SentText Cone = default,
    [property: AtmosphereWords(AtmosphereUse.Firing)] SentText Atmosphere = default);

/// <summary>The firing.</summary>
/// <param name="FiringKind">bisque, glaze, single, overglaze, raku, salt, soda, wood, pit or saggar.</param>
/// <param name="Cone">The cone it is fired to, as text.</param>
/// <param name="Atmosphere">oxidation, neutral or reduction.</param>
/// <param name="Schedule">The caller's name for the schedule; the check does not read schedules.</param>
[Needs(nameof(FiringKind), nameof(Cone), nameof(Atmosphere))]
public sealed record FiringRequest(
    [property: WordsOf(typeof(FiringKind))] SentText FiringKind = default,
    [property: RegularExpression(ConeSpelling.Pattern)] SentText Cone = default,
    [property: AtmosphereWords(AtmosphereUse.Firing)] SentText Atmosphere = default,
    SentText Schedule = default);

/// <summary>A piece, or several alike.</summary>
/// <param name="Id">The caller's name for it; each once.</param>
/// <param name="Count">How many alike, 1 to 10,000; 1 when left out.</param>
/// <param name="Body">Id of a clay body, of the data package or an overlay.</param>
/// <param name="OwnBody">A body of one's own, in place of <paramref name="Body"/>.</param>
/// <param name="Coats">Its coats, innermost first; none for bare ware.</param>
/// <param name="State">
/// wet, leather-hard, bone-dry, bisqued or glaze-fired; left out: what its earlier firings made it, or what this firing takes.
/// </param>
/// <param name="ThickestMillimetres">Thickest wall, mm.</param>
/// <param name="Size">Its outer size.</param>
/// <param name="Use">food or decorative; left out: nothing is promised for food.</param>
/// <param name="EarlierFirings">The firings it has had, the first one first.</param>
/// <param name="Ref">The caller's own reference; comes back as it is.</param>
[Needs(nameof(Id))]
public sealed record PieceRequest(
    SentText Id = default,
    [property: Range(1, 10_000), DefaultValue(1)] SentText Count = default,
    SentText Body = default,
    OwnBodyRequest? OwnBody = null,
    [property: Items(0, LoadLimits.MostCoats)] IReadOnlyList<CoatRequest?>? Coats = null,
    [property: WordsOf(typeof(PieceState))] SentText State = default,
    [property: Range(0.0, LoadLimits.MostMillimetres, MinimumIsExclusive = true)] SentText ThickestMillimetres = default,
    SizeRequest? Size = null,
    [property: AllowedValues("food", "decorative")] SentText Use = default,
    [property: Items(0, LoadLimits.MostEarlierFirings)] IReadOnlyList<EarlierFiringRequest?>? EarlierFirings = null,
    SentText Ref = default);

/// <summary>A firing that a piece has had.</summary>
/// <param name="FiringKind">bisque, glaze, single, overglaze, raku, salt, soda, wood, pit or saggar.</param>
/// <param name="Cone">The cone it was fired to, as text; left out: not known.</param>
[Needs(nameof(FiringKind))]
public sealed record EarlierFiringRequest(
    [property: WordsOf(typeof(FiringKind))] SentText FiringKind = default,
    [property: RegularExpression(ConeSpelling.Pattern)] SentText Cone = default);

/// <summary>A clay body of one's own; what its mark does not say is assumed, and told in the reasons.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Bisque">The cones of its bisque.</param>
/// <param name="Mature">The cones at which it is mature.</param>
/// <param name="Mark">In place of <paramref name="Mature"/>: what stands on the bag, as cone 6 or 5–6.</param>
[Needs(nameof(Name))]
public sealed record OwnBodyRequest(
    SentText Name = default, OwnBisqueRequest? Bisque = null, OwnRangeRequest? Mature = null, SentText Mark = default);

/// <summary>The cones of a bisque, as text.</summary>
/// <param name="Min">Lowest cone.</param>
/// <param name="Max">Highest cone.</param>
[Needs(nameof(Min), nameof(Max))]
public sealed record OwnBisqueRequest(
    [property: RegularExpression(ConeSpelling.Pattern)] SentText Min = default,
    [property: RegularExpression(ConeSpelling.Pattern)] SentText Max = default);

/// <summary>The cones of a body or a glaze, as text; at least one of them.</summary>
/// <param name="Min">Lowest cone.</param>
/// <param name="Best">Best cone.</param>
/// <param name="Max">Highest cone that it stands.</param>
public sealed record OwnRangeRequest(
    [property: RegularExpression(ConeSpelling.Pattern)] SentText Min = default,
    [property: RegularExpression(ConeSpelling.Pattern)] SentText Best = default,
    [property: RegularExpression(ConeSpelling.Pattern)] SentText Max = default);

/// <summary>One coat of a piece.</summary>
/// <param name="Glaze">Id of a glaze or decoration, of the data package or an overlay.</param>
/// <param name="OwnGlaze">A glaze of one's own, in place of <paramref name="Glaze"/>.</param>
/// <param name="Contains">What it holds that matters for food, fumes or neighbours, each metal by its name.</param>
/// <param name="State">fresh or fired; left out: what the state of the piece makes likely.</param>
/// <param name="FiredCone">The cone that a fired coat was fired to, as text; left out: not known.</param>
/// <param name="Where">inside, outside, both or foot-free; left out: not known.</param>
public sealed record CoatRequest(
    SentText Glaze = default,
    OwnGlazeRequest? OwnGlaze = null,
    [property: WordsOf(typeof(Fume)), Items(1)] IReadOnlyList<SentText>? Contains = null,
    [property: AllowedValues("fresh", "fired")] SentText State = default,
    [property: RegularExpression(ConeSpelling.Pattern)] SentText FiredCone = default,
    [property: AllowedValues("inside", "outside", "both", "foot-free")] SentText Where = default);

/// <summary>A glaze of one's own.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Cones">Its cones.</param>
/// <param name="Atmospheres">Atmospheres it is made for; left out: any.</param>
/// <param name="Mark">In place of <paramref name="Cones"/>: what stands on the jar, as cone 6 or 5–6.</param>
[Needs(nameof(Name))]
public sealed record OwnGlazeRequest(
    SentText Name = default,
    OwnRangeRequest? Cones = null,
    [property: AtmosphereWords(AtmosphereUse.Firing), Items(1)] IReadOnlyList<SentText>? Atmospheres = null,
    SentText Mark = default);

/// <summary>A size, mm.</summary>
/// <param name="HeightMillimetres">Height.</param>
/// <param name="WidthMillimetres">Width.</param>
/// <param name="DepthMillimetres">Depth; the width again when left out, as for round ware.</param>
[Needs(nameof(HeightMillimetres))]
public sealed record SizeRequest(
    [property: Range(0.0, LoadLimits.MostMillimetres, MinimumIsExclusive = true)] SentText HeightMillimetres = default,
    [property: Range(0.0, LoadLimits.MostMillimetres, MinimumIsExclusive = true)] SentText WidthMillimetres = default,
    [property: Range(0.0, LoadLimits.MostMillimetres, MinimumIsExclusive = true)] SentText DepthMillimetres = default);

/// <summary>One clay body, its coats and one firing.</summary>
/// <param name="Body">Id of a clay body, of the data package or an overlay.</param>
/// <param name="OwnBody">A body of one's own, in place of <paramref name="Body"/>.</param>
/// <param name="Coats">Its coats, innermost first; none for bare ware.</param>
/// <param name="Firing">The firing.</param>
/// <param name="State">State of the ware; left out: the state that such a firing takes.</param>
/// <param name="Use">food or decorative; left out: nothing is promised for food.</param>
/// <param name="Kiln">The kiln; left out: one that suits the firing.</param>
/// <param name="EarlierFirings">The firings it has had, the first one first.</param>
/// <param name="Ref">The caller's own reference; comes back as it is.</param>
[Needs(nameof(Firing))]
public sealed record PairingRequest(
    SentText Body = default,
    OwnBodyRequest? OwnBody = null,
    [property: Items(0, LoadLimits.MostCoats)] IReadOnlyList<CoatRequest?>? Coats = null,
    FiringRequest? Firing = null,
    [property: WordsOf(typeof(PieceState))] SentText State = default,
    [property: AllowedValues("food", "decorative")] SentText Use = default,
    [property: Needs(nameof(Contract.Kilns.Kiln.MaxCone))] Kiln? Kiln = null,
    [property: Items(0, LoadLimits.MostEarlierFirings)] IReadOnlyList<EarlierFiringRequest?>? EarlierFirings = null,
    SentText Ref = default);
