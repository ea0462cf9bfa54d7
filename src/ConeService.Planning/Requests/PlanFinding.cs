using ConeService.Contract.Answers;

namespace ConeService.Planning.Requests;

/// <summary>One thing wrong with a request, or to be told about it.</summary>
/// <param name="Code">Stable name: one of <see cref="PlanFindingCodes"/>, or of the findings of the contract.</param>
/// <param name="Pointer">JSON pointer (RFC 6901) into the request.</param>
/// <param name="Value">What was sent, as text; null where nothing was.</param>
/// <param name="Cause">What the load check, the fit or the reading of a quantity said, where they said it; its pointer is their own.</param>
public sealed record PlanFinding(string Code, string Pointer, string? Value = null, Finding? Cause = null);

/// <summary>Raised when no plan can be made of a request; carries every finding.</summary>
public sealed class PlanRefusedException : Exception
{
    /// <summary>Refuses; at least one finding.</summary>
    public PlanRefusedException(IReadOnlyList<PlanFinding> findings)
        : base(string.Join("; ", findings.Select(f => $"{f.Pointer}: {f.Code}"))) => Findings = findings;

    /// <summary>Everything that was found wrong.</summary>
    public IReadOnlyList<PlanFinding> Findings { get; }
}

/// <summary>Codes of findings of a plan, beside those that the contract has already.</summary>
public static class PlanFindingCodes
{
    /// <summary>More than 26 weeks between the ends of the horizon.</summary>
    public const string HorizonTooLong = "horizon-too-long";

    /// <summary>No kiln can be started within the horizon.</summary>
    public const string NoStartInHorizon = "no-start-in-horizon";

    /// <summary>A piece is due before it is ready.</summary>
    public const string DueBeforeReady = "due-before-ready";

    /// <summary>Two kilns have the same id.</summary>
    public const string KilnIdRepeated = "kiln-id-repeated";

    /// <summary>A firing is not on the menu of its kiln.</summary>
    public const string FiringNotOnMenu = "firing-not-on-menu";

    /// <summary>Two pinned firings take the same kiln at the same time.</summary>
    public const string PinsOverlap = "pins-overlap";

    /// <summary>A firing names a piece that is not in the backlog, or more of them than there are.</summary>
    public const string PieceUnknown = "piece-unknown";

    /// <summary>A warning: the load check does not accept what a pinned firing holds; it is kept.</summary>
    public const string PinNotAccepted = "pin-not-accepted";

    /// <summary>A warning: a pinned firing holds more than the model of room lets in; it is kept.</summary>
    public const string PinOverfull = "pin-overfull";

    /// <summary>A warning: a pinned firing holds pieces that are not ready when it is loaded; it is kept.</summary>
    public const string PinNotReady = "pin-not-ready";

    /// <summary>A warning: the load check accepts the piece in no firing of the menus but would have it looked at in one, which is taken.</summary>
    public const string LookAtPiece = "look-at-piece";

    /// <summary>A warning: a firing of the former plan can't be held, since kiln, start or piece are not there any more.</summary>
    public const string AnnouncedNotPossible = "announced-not-possible";

    /// <summary>No schedule fits a firing of the menu and its hours were not sent.</summary>
    public const string HoursUnknown = "hours-unknown";
}
