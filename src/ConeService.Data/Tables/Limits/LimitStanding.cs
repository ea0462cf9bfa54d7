namespace ConeService.Data;

/// <summary>Whether a limit binds where its body speaks.</summary>
public enum LimitStanding
{
    /// <summary>Binds employers there.</summary>
    Legal,

    /// <summary>Recommended.</summary>
    Recommended,
}
