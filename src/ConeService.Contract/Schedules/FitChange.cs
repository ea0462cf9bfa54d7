using ConeService.Contract.Texts;

namespace ConeService.Contract.Schedules;

/// <summary>What was changed against the template, or lost.</summary>
public enum FitChangeCode
{
    /// <summary>A drying segment was added.</summary>
    DryingAdded,

    /// <summary>A hold for drying was lengthened.</summary>
    DryingLengthened,

    /// <summary>A ramp was slowed down or divided for a thick wall.</summary>
    SlowedForThickness,

    /// <summary>A cooling was slowed down or added for a thick wall.</summary>
    CoolingForThickness,

    /// <summary>A target close to the peak was lowered, so that the last ramp is long enough.</summary>
    ApproachLowered,

    /// <summary>A segment fell away, as the peak or the segment before it made it needless.</summary>
    SegmentDropped,

    /// <summary>Two segments were joined, as the controller holds too few.</summary>
    SegmentsMerged,

    /// <summary>Something of the template that the controller can't do.</summary>
    Lost,

    /// <summary>Rate or hold of the last ramp was changed, so that the next cone stays up.</summary>
    LastRampChanged,

    /// <summary>Rate or hold of the last ramp was trimmed, as the controller takes whole degrees and minutes.</summary>
    Trimmed,

    /// <summary>A step of the template that no controller does.</summary>
    DoneByHand,
}

/// <summary>One change against the template.</summary>
/// <param name="Code">What sort of change.</param>
/// <param name="TemplateSegments">Numbers of the template's segments that it concerns; empty for something added.</param>
/// <param name="Message">The change in a sentence.</param>
public sealed record FitChange(FitChangeCode Code, IReadOnlyList<int> TemplateSegments, Message Message);
