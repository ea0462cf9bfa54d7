using ConeService.Contract.Answers;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Materials;
using ConeService.Firing.Room;

namespace ConeService.Firing.Loads;

/// <summary>A load that was read without findings.</summary>
internal sealed record Load(Kiln Kiln, PlannedFiring Firing, IReadOnlyList<Piece> Pieces, IReadOnlyList<Assumption> Assumed)
{
    /// <summary>The caller's own name for it; null when none was sent.</summary>
    public string? Ref { get; init; }

    /// <summary>The other kilns of the studio; none where nothing was said of them.</summary>
    public IReadOnlyList<Kiln> Kilns { get; init; } = [];

    /// <summary>The firings that the studio runs; none where nothing was said of them.</summary>
    public IReadOnlyList<PlannedFiring> Offered { get; init; } = [];
}

/// <summary>The kiln.</summary>
/// <param name="Heat">What heats it.</param>
/// <param name="MaxOrder">Place of its highest cone in the order of cones; anything fits under <see cref="int.MaxValue"/>.</param>
/// <param name="MaxCone">Its highest cone as text.</param>
/// <param name="Atmospheres">What it can hold.</param>
/// <param name="Interior">Its room; null when not told.</param>
internal sealed record Kiln(KilnHeat Heat, int MaxOrder, string MaxCone, EnumSet<Atmosphere> Atmospheres, Size? Interior)
{
    /// <summary>The caller's name for it; null when it has none.</summary>
    public string? Id { get; init; }

    /// <summary>True where its room is round.</summary>
    public bool IsRound { get; init; }

    /// <summary>Thickness of its shelves, mm; 0 where not told.</summary>
    public decimal ShelfThickness { get; init; }

    /// <summary>What was told of its shelves.</summary>
    public ToldShelves Shelves { get; init; } = ToldShelves.Nothing;

    /// <summary>Its highest temperature as a number without a unit: in °C at most, in °F less. Null when not told.</summary>
    public decimal? MostDegrees { get; init; }
}

/// <summary>The firing as it is planned.</summary>
internal sealed record PlannedFiring(FiringNeeds Needs, PotterCone Cone, Atmosphere Atmosphere)
{
    public FiringKind Kind => Needs.Row.Id;

    public bool IsReduction => Atmosphere == Atmosphere.Reduction;

    /// <summary>True where glazes melt side by side: only there do they colour each other or have to share a cone.</summary>
    public bool MeltsGlazes => Kind is FiringKind.Glaze or FiringKind.Single or FiringKind.Wood or FiringKind.Salt or FiringKind.Soda;
}

/// <summary>A size, mm.</summary>
internal sealed record Size(decimal Height, decimal? Width, decimal? Depth)
{
    /// <summary>True where no depth was told: round ware, as deep as it is wide.</summary>
    public bool IsRound { get; init; }
}

/// <summary>What a piece is for.</summary>
internal enum PieceUse
{
    /// <summary>For food or drink.</summary>
    Food,

    /// <summary>To look at.</summary>
    Decorative,
}

/// <summary>A piece, or several alike.</summary>
internal sealed record Piece
{
    public required string Id { get; init; }

    /// <summary>The caller's own reference; null when none was sent.</summary>
    public string? Ref { get; init; }

    /// <summary>Place in the request.</summary>
    public required int Index { get; init; }

    /// <summary>JSON pointer to it; empty where it is the whole request.</summary>
    public required string At { get; init; }

    /// <summary>How many alike.</summary>
    public int Count { get; init; } = 1;

    /// <summary>Null when nobody knows it; <see cref="Unknown"/> then says what was sent.</summary>
    public required Body? Body { get; init; }

    /// <summary>The coats that are known, innermost first.</summary>
    public required IReadOnlyList<CoatOnPiece> Coats { get; init; }

    /// <summary>Materials that are not known, with what to do.</summary>
    public IReadOnlyList<UnknownMaterial> Unknown { get; init; } = [];

    public required PieceState State { get; init; }

    public decimal? Thickness { get; init; }

    public Size? Size { get; init; }

    public PieceUse? Use { get; init; }

    /// <summary>What it has been through.</summary>
    public PieceHistory History { get; init; } = PieceHistory.None;

    /// <summary>Pieces with the same key are judged once: nothing but their names differs.</summary>
    public required string Key { get; init; }

    /// <summary>True where its bisque is taken to have matured the body, since nobody told how hot it was.</summary>
    public bool IsTakenAsMatured => State == PieceState.Bisqued && Body is { MaturesInBisque: true } && !History.IsWhole;

    /// <summary>True where the body has been at its maturity, or is taken to have been: a cooler fire does not undo that.</summary>
    public bool WasMatured =>
        IsTakenAsMatured || (History.Hottest is { } had && Body is { Mature: { } mature } && !had.IsBelow(mature.Min));
}

/// <summary>A coat on a piece.</summary>
/// <param name="Coat">The coat.</param>
/// <param name="GivesOff">What it gives off, with what this one holds beyond what all of its sort do.</param>
/// <param name="SpoiledBy">What spoils it, likewise.</param>
internal sealed record CoatOnPiece(Coat Coat, EnumSet<Fume> GivesOff, EnumSet<Fume> SpoiledBy)
{
    /// <summary>Its place among the coats as sent, from 0.</summary>
    public int Place { get; init; }

    /// <summary>What the caller says that it holds.</summary>
    public EnumSet<Fume> Contains { get; init; }

    /// <summary>True when it has been fired, false when not; null when nobody said so.</summary>
    public bool? SaidFired { get; init; }

    /// <summary>The cone it was fired to; null when not fired or not known.</summary>
    public PotterCone? FiredAt { get; init; }

    /// <summary>Where it is; null when not told.</summary>
    public CoatWhere? Where { get; init; }

    /// <summary>True when it has been fired, as said or as the state of the piece makes it likely.</summary>
    public bool IsFired { get; init; }

    /// <summary>True when its firing was too cool for it: it has yet to get its cone.</summary>
    public bool WasUnderfired => IsFired && FiredAt is { } at && at.IsBelow(Coat.Min);

    /// <summary>True when it melts in a firing to this cone, be it for the first time or again.</summary>
    public bool MeltsAt(PotterCone cone) => Coat.Melts && !cone.IsBelow(Coat.Min);
}

/// <summary>Where a coat is on a piece.</summary>
internal enum CoatWhere
{
    /// <summary>Inside only.</summary>
    Inside,

    /// <summary>Outside only.</summary>
    Outside,

    /// <summary>Inside and outside.</summary>
    Both,

    /// <summary>All over but for the foot.</summary>
    FootFree,
}

/// <summary>Whether a coat has been fired.</summary>
internal enum CoatState
{
    /// <summary>Not yet.</summary>
    Fresh,

    /// <summary>It has.</summary>
    Fired,
}

/// <summary>A material that was named and is not known.</summary>
/// <param name="What">What it was named as.</param>
/// <param name="Sent">What was sent.</param>
/// <param name="Near">Ids that the caller may have meant.</param>
/// <param name="Told">What is missing, in a sentence of its own; null where the material as such is not known.</param>
internal sealed record UnknownMaterial(UnknownAs What, string Sent, IReadOnlyList<string> Near, Message? Told = null)
{
    /// <summary>Where in the piece it stands, as a pointer.</summary>
    public string Within { get; init; } = "";
}

/// <summary>What a material that is not known was named as.</summary>
internal enum UnknownAs
{
    /// <summary>The body.</summary>
    Body,

    /// <summary>A body whose base clay decides, and the base clay is not named.</summary>
    BaseClay,

    /// <summary>A coat.</summary>
    Coat,

    /// <summary>The cones of a body of the caller's own, in part or altogether.</summary>
    MarksOfBody,

    /// <summary>The bisque of a body of the caller's own.</summary>
    Bisque,

    /// <summary>The cones of a glaze of the caller's own, in part or altogether.</summary>
    MarksOfCoat,

    /// <summary>The body, which is not named at all.</summary>
    NoBody,

    /// <summary>The state of the piece.</summary>
    State,
}
