namespace ConeService.Data;

/// <summary>
/// The load rules that the load check applies. A package without one of them is refused: its reasons would rest on nothing.
/// </summary>
public static class LoadRuleIds
{
    /// <summary>A bisque suits its lowest-maturing body.</summary>
    public const string SharedBisque = "load01";

    /// <summary>A bisque stays a cone below the best cone of the body.</summary>
    public const string BisqueBelowMaturity = "load02";

    /// <summary>Polished terra sigillata stays out of a normal bisque.</summary>
    public const string SigillataBisque = "load03";

    /// <summary>Bisque and glaze ware share only a cone.</summary>
    public const string BisqueWithGlaze = "load04";

    /// <summary>Nothing damp or raw with overglaze.</summary>
    public const string NothingRawWithOverglaze = "load05";

    /// <summary>Glazes of one load share a cone.</summary>
    public const string GlazesShareCone = "load06";

    /// <summary>The body stands the cone of the glaze.</summary>
    public const string BodyStandsCone = "load08";

    /// <summary>A body fired well below its best cone leaks and crazes.</summary>
    public const string BodyBelowBest = "load09";

    /// <summary>Room to electric elements.</summary>
    public const string RoomToElements = "load16";

    /// <summary>Room to the wall of a fuel kiln.</summary>
    public const string RoomToWalls = "load17";

    /// <summary>Room over the load.</summary>
    public const string RoomAbove = "load24";

    /// <summary>Glaze-free foot.</summary>
    public const string FootMargin = "load30";

    /// <summary>Bone dry before it goes in.</summary>
    public const string BoneDry = "load39";

    /// <summary>Longer candling for thick walls.</summary>
    public const string ThickWall = "load42";

    /// <summary>Overglaze: hottest first.</summary>
    public const string HottestFirst = "load50";

    /// <summary>Salt and soda in a kiln of their own.</summary>
    public const string VapourKiln = "load55";

    /// <summary>Suspect the zero first.</summary>
    public const string SuspectTheZero = "load56";

    /// <summary>No kiln beyond its highest cone.</summary>
    public const string KilnHighestCone = "load57";

    /// <summary>Only what the kiln is made for.</summary>
    public const string KilnMadeFor = "load58";

    /// <summary>A glaze below its range is unmelted.</summary>
    public const string GlazeBelowRange = "load59";

    /// <summary>A glaze above its range runs.</summary>
    public const string GlazeAboveRange = "load60";

    /// <summary>A body below its range is porous.</summary>
    public const string BodyBelowRange = "load61";

    /// <summary>A bisque within the range of the body.</summary>
    public const string BisqueRange = "load62";

    /// <summary>Raw, bisqued, glaze-fired: in that order.</summary>
    public const string FiringOrder = "load63";

    /// <summary>Overglaze on glaze-fired ware only.</summary>
    public const string OverglazeOnGlaze = "load64";

    /// <summary>Chrome and tin apart.</summary>
    public const string ChromeAndTin = "load65";

    /// <summary>Copper in reduction and light glazes apart.</summary>
    public const string CopperInReduction = "load66";

    /// <summary>Raku, pit and saggar ware is not for food.</summary>
    public const string SmokedNotForFood = "load67";

    /// <summary>Overglaze, microwaves and food.</summary>
    public const string OverglazeAndFood = "load68";

    /// <summary>Food needs a dense body or a sound glaze.</summary>
    public const string FoodNeedsDenseWare = "load69";

    /// <summary>Nothing unknown goes in.</summary>
    public const string KnownMaterials = "load70";

    /// <summary>Very thick greenware is looked at.</summary>
    public const string VeryThick = "load71";

    /// <summary>A second glaze fire melts further.</summary>
    public const string Refire = "load72";

    /// <summary>Raw glaze for once firing.</summary>
    public const string RawGlaze = "load73";

    /// <summary>Open bodies for raku.</summary>
    public const string OpenBodies = "load74";

    /// <summary>Each glaze in its atmosphere.</summary>
    public const string GlazeAtmosphere = "load75";

    /// <summary>No lead for food or schools.</summary>
    public const string LeadNotForFood = "load76";

    /// <summary>All of them.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        SharedBisque, BisqueBelowMaturity, SigillataBisque, BisqueWithGlaze, NothingRawWithOverglaze, GlazesShareCone, BodyStandsCone,
        BodyBelowBest,
        RoomToElements, RoomToWalls, RoomAbove, FootMargin, BoneDry, ThickWall, HottestFirst, VapourKiln, SuspectTheZero, KilnHighestCone,
        KilnMadeFor, GlazeBelowRange,
        GlazeAboveRange, BodyBelowRange, BisqueRange, FiringOrder, OverglazeOnGlaze, ChromeAndTin, CopperInReduction, SmokedNotForFood,
        OverglazeAndFood,
        FoodNeedsDenseWare, KnownMaterials, VeryThick, Refire, RawGlaze, OpenBodies, GlazeAtmosphere, LeadNotForFood,
    ];
}
