namespace ConeService.Contract.Schedules;

/// <summary>How long somebody must stay with the kiln.</summary>
public enum AttendanceRule
{
    /// <summary>As is usual for the kind of firing.</summary>
    Usual,

    /// <summary>For the whole firing, as a local rule asks.</summary>
    WholeFiring,
}
