namespace ConeService.Data;

/// <summary>Whom a sentence speaks to.</summary>
public enum MessageAudience
{
    /// <summary>Whoever reads it.</summary>
    Anyone,

    /// <summary>A student: what happens and what to do.</summary>
    Student,

    /// <summary>The person who runs the kilns: rule, range, source.</summary>
    Technician,
}
