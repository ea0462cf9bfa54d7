namespace ConeService.Contract.Plans;

/// <summary>Codes of warnings of a plan. A warning is no problem: it comes with the answer.</summary>
public static class PlanWarningCodes
{
    /// <summary>The load check does not accept what a pinned firing holds; it is kept.</summary>
    public const string PinNotAccepted = "pin-not-accepted";

    /// <summary>A pinned firing holds more than the model of room lets in; it is kept.</summary>
    public const string PinOverfull = "pin-overfull";

    /// <summary>A pinned firing holds pieces that are not ready when it is loaded; it is kept.</summary>
    public const string PinNotReady = "pin-not-ready";

    /// <summary>No firing accepts the piece without its being looked at; one that would have it looked at is taken.</summary>
    public const string LookAtPiece = "look-at-piece";

    /// <summary>The native solver can't be loaded on this machine: the plan was made by search alone.</summary>
    public const string WithoutSolver = "without-solver";

    /// <summary>A firing of the former plan can't be held, since kiln, start or piece are not there any more.</summary>
    public const string AnnouncedNotPossible = "announced-not-possible";

    /// <summary>Somebody must be at the kiln in hours in which the request has nobody there.</summary>
    public const string NobodyThere = "nobody-there";

    /// <summary>The same, and something burns all the while.</summary>
    public const string LiveFlameAlone = "live-flame-alone";

    /// <summary>Minutes were sent that are fewer than the fit takes for the thickest ware in the firing; they hold.</summary>
    public const string MinutesTooFew = "minutes-too-few";
}
