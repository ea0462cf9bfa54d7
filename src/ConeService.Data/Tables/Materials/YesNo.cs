namespace ConeService.Data;

/// <summary>Yes or no.</summary>
public enum YesNo
{
    /// <summary>Yes.</summary>
    Yes,

    /// <summary>No.</summary>
    No,
}
