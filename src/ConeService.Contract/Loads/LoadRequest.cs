using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.Kilns;
using ConeService.Contract.Materials;
using ConeService.Data;

namespace ConeService.Contract.Loads;

/// <summary>A load to be checked before it is fired.</summary>
/// <param name="Kiln">The kiln.</param>
/// <param name="Firing">The firing.</param>
/// <param name="Pieces">1 to 2,000 pieces.</param>
public sealed record LoadRequest(Kiln? Kiln, FiringRequest? Firing, IReadOnlyList<PieceRequest?>? Pieces);

/// <summary>The firing.</summary>
/// <param name="FiringKind">bisque, glaze, single, overglaze, raku, salt, soda, wood, pit or saggar.</param>
/// <param name="Cone">The cone it is fired to, as text.</param>
/// <param name="Atmosphere">oxidation, neutral or reduction.</param>
/// <param name="Schedule">The caller's name for the schedule; the check does not read schedules.</param>
public sealed record FiringRequest(
    SentText FiringKind = default, SentText Cone = default, SentText Atmosphere = default, SentText Schedule = default);

/// <summary>A piece, or several alike.</summary>
/// <param name="Id">The caller's name for it; each once.</param>
/// <param name="Count">How many alike, 1 to 10,000; 1 when left out.</param>
/// <param name="Body">Id of a clay body, of the data package or an overlay.</param>
/// <param name="OwnBody">A body of one's own, in place of <paramref name="Body"/>.</param>
/// <param name="Coats">Its coats, innermost first; none for bare ware.</param>
/// <param name="State">wet, leather-hard, bone-dry, bisqued or glaze-fired.</param>
/// <param name="ThickestMillimetres">Thickest wall, mm.</param>
/// <param name="Size">Its outer size.</param>
/// <param name="Use">food or decorative; left out: nothing is promised for food.</param>
public sealed record PieceRequest(
    SentText Id = default,
    SentText Count = default,
    SentText Body = default,
    OwnBodyRequest? OwnBody = null,
    IReadOnlyList<CoatRequest?>? Coats = null,
    SentText State = default,
    SentText ThickestMillimetres = default,
    SizeRequest? Size = null,
    SentText Use = default);

/// <summary>A clay body of one's own; cones as text.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="BisqueMin">Lowest cone of its bisque.</param>
/// <param name="BisqueMax">Highest cone of its bisque.</param>
/// <param name="MatureMin">Lowest cone at which it is mature.</param>
/// <param name="MatureBest">Best cone.</param>
/// <param name="MatureMax">Highest cone it stands.</param>
public sealed record OwnBodyRequest(
    SentText Name = default,
    SentText BisqueMin = default,
    SentText BisqueMax = default,
    SentText MatureMin = default,
    SentText MatureBest = default,
    SentText MatureMax = default);

/// <summary>One coat of a piece.</summary>
/// <param name="Glaze">Id of a glaze or decoration, of the data package or an overlay.</param>
/// <param name="OwnGlaze">A glaze of one's own, in place of <paramref name="Glaze"/>.</param>
/// <param name="Contains">What it holds that reaches neighbours or is spoiled by them: chrome, copper, lead, manganese, tin, zinc.</param>
public sealed record CoatRequest(SentText Glaze = default, OwnGlazeRequest? OwnGlaze = null, IReadOnlyList<SentText>? Contains = null);

/// <summary>A glaze of one's own; cones as text.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="ConeMin">Lowest cone.</param>
/// <param name="ConeBest">Best cone.</param>
/// <param name="ConeMax">Highest cone.</param>
/// <param name="Atmospheres">Atmospheres it is made for; left out: any.</param>
public sealed record OwnGlazeRequest(
    SentText Name = default,
    SentText ConeMin = default,
    SentText ConeBest = default,
    SentText ConeMax = default,
    IReadOnlyList<SentText>? Atmospheres = null);

/// <summary>A size, mm.</summary>
/// <param name="HeightMillimetres">Height.</param>
/// <param name="WidthMillimetres">Width.</param>
/// <param name="DepthMillimetres">Depth; the width again when left out, as for round ware.</param>
public sealed record SizeRequest(
    SentText HeightMillimetres = default, SentText WidthMillimetres = default, SentText DepthMillimetres = default);

/// <summary>One clay body, its coats and one firing.</summary>
/// <param name="Body">Id of a clay body, of the data package or an overlay.</param>
/// <param name="OwnBody">A body of one's own, in place of <paramref name="Body"/>.</param>
/// <param name="Coats">Its coats, innermost first; none for bare ware.</param>
/// <param name="Firing">The firing.</param>
/// <param name="State">State of the ware; left out: the state that such a firing takes.</param>
/// <param name="Use">food or decorative; left out: nothing is promised for food.</param>
/// <param name="Kiln">The kiln; left out: one that suits the firing.</param>
public sealed record PairingRequest(
    SentText Body = default,
    OwnBodyRequest? OwnBody = null,
    IReadOnlyList<CoatRequest?>? Coats = null,
    FiringRequest? Firing = null,
    SentText State = default,
    SentText Use = default,
    Kiln? Kiln = null);
