namespace ConeService.Data;

/// <summary>What the hours that need a person are counted from.</summary>
public enum AttendanceMoment
{
    /// <summary>The whole firing, to the end of its programme.</summary>
    Firing,

    /// <summary>The start.</summary>
    Start,

    /// <summary>Each change of vents, damper or atmosphere.</summary>
    Setting,

    /// <summary>The time in which a vent, a lid or a door stands open for fumes.</summary>
    Vented,

    /// <summary>The peak, with its hold.</summary>
    Peak,
}
