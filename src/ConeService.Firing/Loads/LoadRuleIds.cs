namespace ConeService.Firing.Loads;

/// <summary>
/// The load rules that the load check applies. Each rule in code says which it rests on; a package without one of them is
/// refused, since its reasons would rest on nothing.
/// </summary>
internal static class LoadRuleIds
{
    /// <summary>A bisque suits its lowest-maturing body.</summary>
    public const string SharedBisque = "bisque-suits-lowest-body";

    /// <summary>A bisque stays a cone below the best cone of the body.</summary>
    public const string BisqueBelowMaturity = "bisque-below-body-maturity";

    /// <summary>Polished terra sigillata stays out of a normal bisque.</summary>
    public const string SigillataBisque = "burnished-ware-out-of-bisque";

    /// <summary>Bisque and glaze ware share only a cone.</summary>
    public const string BisqueWithGlaze = "bisque-with-glaze-same-cone";

    /// <summary>Nothing damp or raw with overglaze.</summary>
    public const string NothingRawWithOverglaze = "nothing-damp-with-overglaze";

    /// <summary>Harder glazes into hotter places.</summary>
    public const string HarderGlazesHotter = "harder-glazes-in-hotter-zone";

    /// <summary>Runny glazes on cookies and catchers.</summary>
    public const string Catcher = "runny-glaze-needs-catcher";

    /// <summary>What metals in coats mean.</summary>
    public const string Metals = "metals-in-coats";

    /// <summary>The body stands the cone of the glaze.</summary>
    public const string BodyStandsCone = "body-stands-glaze-cone";

    /// <summary>A body fired well below its best cone leaks and crazes.</summary>
    public const string BodyBelowBest = "body-underfired-at-glaze-cone";

    /// <summary>Room to electric elements.</summary>
    public const string RoomToElements = "clearance-to-elements";

    /// <summary>Room to the wall of a fuel kiln.</summary>
    public const string RoomToWalls = "clearance-to-kiln-wall";

    /// <summary>Room over the load.</summary>
    public const string RoomAbove = "clearance-to-lid";

    /// <summary>Glaze-free foot.</summary>
    public const string FootMargin = "glaze-free-foot";

    /// <summary>Bone dry before it goes in.</summary>
    public const string BoneDry = "load-bone-dry";

    /// <summary>Longer candling for thick walls.</summary>
    public const string ThickWall = "candle-thick-walls-longer";

    /// <summary>Overglaze: hottest first.</summary>
    public const string HottestFirst = "overglaze-hottest-first";

    /// <summary>Salt and soda in a kiln of their own.</summary>
    public const string VapourKiln = "salt-and-soda-dedicated-kiln";

    /// <summary>Suspect the zero first.</summary>
    public const string SuspectTheZero = "suspect-the-zero-first";

    /// <summary>No kiln beyond its highest cone.</summary>
    public const string KilnHighestCone = "kiln-highest-cone";

    /// <summary>Only what the kiln is made for.</summary>
    public const string KilnMadeFor = "only-firings-kiln-is-for";

    /// <summary>A glaze below its range is unmelted.</summary>
    public const string GlazeBelowRange = "glaze-below-lowest-cone";

    /// <summary>A glaze above its range runs.</summary>
    public const string GlazeAboveRange = "glaze-above-highest-cone";

    /// <summary>A body below its range is porous.</summary>
    public const string BodyBelowRange = "body-below-lowest-cone";

    /// <summary>A bisque within the range of the body.</summary>
    public const string BisqueRange = "bisque-within-body-range";

    /// <summary>Raw, bisqued, glaze-fired: in that order.</summary>
    public const string FiringOrder = "bisque-before-glaze-fire";

    /// <summary>Overglaze on glaze-fired ware only.</summary>
    public const string OverglazeOnGlaze = "overglaze-on-fired-glaze-only";

    /// <summary>Chrome and tin apart.</summary>
    public const string ChromeAndTin = "tin-white-away-from-chrome";

    /// <summary>Copper in reduction and light glazes apart.</summary>
    public const string CopperInReduction = "light-glazes-away-from-copper";

    /// <summary>Raku, pit and saggar ware is not for food.</summary>
    public const string SmokedNotForFood = "raku-and-smoke-not-for-food";

    /// <summary>Overglaze, microwaves and food.</summary>
    public const string OverglazeAndFood = "overglaze-microwave-and-food";

    /// <summary>Food needs a dense body or a sound glaze.</summary>
    public const string FoodNeedsDenseWare = "food-ware-dense-or-glazed";

    /// <summary>Nothing unknown goes in.</summary>
    public const string KnownMaterials = "ask-about-unknown-material";

    /// <summary>Very thick greenware is looked at.</summary>
    public const string VeryThick = "very-thick-greenware-checked";

    /// <summary>A second glaze fire melts further.</summary>
    public const string Refire = "second-glaze-fire-melts-further";

    /// <summary>Raw glaze for once firing.</summary>
    public const string RawGlaze = "raw-glaze-for-once-firing";

    /// <summary>Open bodies for raku.</summary>
    public const string OpenBodies = "open-bodies-for-raku";

    /// <summary>Each glaze in its atmosphere.</summary>
    public const string GlazeAtmosphere = "glaze-in-its-atmosphere";

    /// <summary>All pieces together within the room of the kiln.</summary>
    public const string LoadWithinRoom = "load-within-room";

    /// <summary>A shelf above the tallest piece.</summary>
    public const string ShelfAbove = "shelf-above-tallest-piece";

    /// <summary>Ware for food away from lead, cadmium and selenium.</summary>
    public const string FoodWareAndFume = "food-ware-away-from-lead";

    /// <summary>A kind of firing has its usual cones.</summary>
    public const string ConesOfKind = "firing-within-cones-of-its-kind";

    /// <summary>Ware stands on its shelf.</summary>
    public const string StandsOnShelf = "ware-stands-on-its-shelf";

    /// <summary>No lead for food or schools.</summary>
    public const string LeadNotForFood = "lead-glaze-not-for-food";
}
