using ConeService.Contract.Answers;
using ConeService.Contract.Json;
using ConeService.Contract.Loads;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Contract.Plans;

/// <summary>A firing plan. Moments have the offset of the time zone of the request, or of the start of its horizon.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Firings">The firings, by loading.</param>
/// <param name="Pieces">What becomes of each piece, in the order sent.</param>
/// <param name="Unplanned">What is left undone, with what binds.</param>
/// <param name="Summary">The plan in figures.</param>
/// <param name="Cautions">Hazards of these firings and what controls them; local codes and licensed practice decide.</param>
/// <param name="Warnings">What was kept or taken all the same.</param>
/// <param name="Basis">What acceptance rests on.</param>
/// <param name="Sources">Ids of the sources of the rules of loading.</param>
/// <param name="Assumed">What was left out, with what was taken.</param>
/// <param name="Confidence">That of the model of room, which is an estimate.</param>
public sealed record FiringPlan(
    string DatasetVersion,
    IReadOnlyList<PlanFiring> Firings,
    IReadOnlyList<PieceOutcome> Pieces,
    IReadOnlyList<UndonePieces> Unplanned,
    PlanSummary Summary,
    IReadOnlyList<LoadCaution> Cautions,
    IReadOnlyList<PlanWarning> Warnings,
    Basis Basis,
    IReadOnlyList<string> Sources,
    IReadOnlyList<Assumption> Assumed,
    Confidence Confidence) : IComputed
{
    /// <summary>What one firing more, one layer of shelves more, or a due date a week later would bring; those that can be asked.</summary>
    public IReadOnlyList<WhatIf> WhatIf { get; init; } = [];

    Address IComputed.Explain => new("/v1/load-rules");
}

/// <summary>Something to be told about a plan.</summary>
/// <param name="Code">Stable kebab-case name of the kind of warning.</param>
/// <param name="Message">What was found, and what was done about it.</param>
/// <param name="Pointer">Where in the request (RFC 6901).</param>
public sealed record PlanWarning(string Code, Message Message, string Pointer);

/// <summary>A firing of a plan.</summary>
/// <param name="Number">Its number in the plan, from 1.</param>
/// <param name="KilnId">Id of the kiln.</param>
/// <param name="LoadingFrom">When loading begins.</param>
/// <param name="Start">When it starts.</param>
/// <param name="OpeningFrom">When the kiln can be opened, by the hours that were planned with; the pyrometer decides.</param>
/// <param name="UnloadedAt">When it is unloaded, by somebody who is there; the kiln is free again.</param>
/// <param name="FiringKind">Its kind, as sent.</param>
/// <param name="Cone">Its cone, as sent.</param>
/// <param name="Atmosphere">Its atmosphere, as sent.</param>
/// <param name="Schedule">Id of its schedule; null where neither was sent one nor was one needed.</param>
/// <param name="FittedSchedule">Address of the schedule fitted to cone, kiln and start; null without a schedule.</param>
/// <param name="WitnessCones">The cones to set: guide, target and guard.</param>
/// <param name="FillPercent">How full the kiln is, % of its room in layers.</param>
/// <param name="Layers">What stands on which layer, tall first.</param>
/// <param name="KilowattHours">Energy, kWh; null where not known.</param>
/// <param name="Cost">Cost, in the currency of the tariff, in kWh, or 1 a firing.</param>
/// <param name="Why">Why it is fired.</param>
/// <param name="IsPinned">True for one that stood in the request.</param>
/// <param name="EndsBeyondHorizon">True where it is unloaded after the end of the horizon.</param>
public sealed record PlanFiring(
    int Number,
    string KilnId,
    DateTimeOffset LoadingFrom,
    DateTimeOffset Start,
    DateTimeOffset OpeningFrom,
    DateTimeOffset UnloadedAt,
    string FiringKind,
    string Cone,
    string Atmosphere,
    string? Schedule,
    Address? FittedSchedule,
    IReadOnlyList<string> WitnessCones,
    double FillPercent,
    IReadOnlyList<PlanLayer> Layers,
    double? KilowattHours,
    double Cost,
    FiringReason Why,
    bool IsPinned,
    bool EndsBeyondHorizon)
{
    /// <summary>When it is hottest, about; null where no schedule tells of it.</summary>
    public DateTimeOffset? Peak { get; init; }

    /// <summary>When the programme ends and the kiln is to be off, about; null where no schedule tells of it.</summary>
    public DateTimeOffset? ProgrammeEnds { get; init; }

    /// <summary>The thickest wall told of any piece in it, mm; null where nobody told of one.</summary>
    public double? ThickestMillimetres { get; init; }

    /// <summary>When somebody must be at the kiln, in order; practice of the trade, under the rules of the house and of the fire
    /// service.</summary>
    public IReadOnlyList<PlanAttendance> Attendance { get; init; } = [];

    /// <summary>What the load check still says of what is in it, each once, worst first.</summary>
    public IReadOnlyList<LoadingNote> LoadingNotes { get; init; } = [];
}

/// <summary>A time in which somebody must be at the kiln.</summary>
/// <param name="From">From.</param>
/// <param name="To">To.</param>
/// <param name="LiveFlame">True where something burns all the while.</param>
/// <param name="Message">Why.</param>
/// <param name="Sources">Ids of the sources.</param>
/// <param name="NobodyThere">What of it lies where the request has nobody there; empty where somebody is.</param>
public sealed record PlanAttendance(
    DateTimeOffset From, DateTimeOffset To, bool LiveFlame, Message Message, IReadOnlyList<string> Sources,
    IReadOnlyList<PlanTime> NobodyThere);

/// <summary>From one moment to a later one.</summary>
/// <param name="From">From.</param>
/// <param name="To">To.</param>
public sealed record PlanTime(DateTimeOffset From, DateTimeOffset To);

/// <summary>Something that the load check says of pieces that it accepts.</summary>
/// <param name="Reason">The reason, as it stands in the load check of this firing.</param>
/// <param name="Pieces">Ids of the pieces, in the order sent; empty where it holds for the whole load.</param>
public sealed record LoadingNote(Reason Reason, IReadOnlyList<string> Pieces);

/// <summary>A layer of shelves.</summary>
/// <param name="Number">Its number, from 1; the tallest ware first.</param>
/// <param name="HeightMillimetres">Free height over the shelf that its ware needs, mm, with the clearance below the next shelf.</param>
/// <param name="SharePercent">How much of the layer is taken, % of what it holds in practice.</param>
/// <param name="Pieces">What stands on it, tall first.</param>
public sealed record PlanLayer(int Number, double HeightMillimetres, double SharePercent, IReadOnlyList<LayerPieces> Pieces);

/// <summary>Pieces alike on a layer.</summary>
/// <param name="Id">Id of the piece.</param>
/// <param name="Count">How many.</param>
/// <param name="Stage">Which of its firings this is, from 1.</param>
public sealed record LayerPieces(string Id, int Count, int Stage);

/// <summary>Why a firing is fired.</summary>
public enum FiringReason
{
    /// <summary>It stood in the request.</summary>
    Pinned,

    /// <summary>It was in the former plan.</summary>
    Announced,

    /// <summary>A piece in it has a date within the horizon.</summary>
    Date,

    /// <summary>It is full enough.</summary>
    Full,
}

/// <summary>Pieces that are left undone.</summary>
/// <param name="Id">Id of the piece.</param>
/// <param name="Count">How many of those alike.</param>
/// <param name="Stage">The firing that they do not get, from 1.</param>
/// <param name="Reason">What binds.</param>
/// <param name="LoadReasons">What the load check says of the firing that comes nearest to one that would take them, where no firing
/// accepts them; else empty.</param>
public sealed record UndonePieces(string Id, int Count, int Stage, WaitReason Reason, IReadOnlyList<Reason> LoadReasons)
{
    /// <summary>What would take them, in a sentence; null where something else binds than that no kiln fires or holds them.</summary>
    public Message? Needs { get; init; }

    /// <summary>The firings that the load check accepts them in, whatever kiln it takes; empty where there is none, or where something
    /// else binds.</summary>
    public IReadOnlyList<NeededFiring> NeededFirings { get; init; } = [];
}

/// <summary>A firing that would take what no firing of the menus does.</summary>
/// <param name="FiringKind">Its kind.</param>
/// <param name="Cones">The cones from and to which it is accepted.</param>
/// <param name="Atmosphere">Its atmosphere.</param>
/// <param name="KilnHeats">The kilns that such a firing is done in.</param>
public sealed record NeededFiring(
    FiringKind FiringKind, ConeRange Cones, [property: AtmosphereWords(AtmosphereUse.Firing)] Atmosphere Atmosphere,
    IReadOnlyList<KilnHeat> KilnHeats);
