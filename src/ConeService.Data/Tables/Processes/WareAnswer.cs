namespace ConeService.Data;

/// <summary>Whether fired ware stands something.</summary>
public enum WareAnswer
{
    /// <summary>No.</summary>
    No,

    /// <summary>On a condition, told beside it.</summary>
    Conditional,

    /// <summary>Usually.</summary>
    Yes,

    /// <summary>As the clay body fired so.</summary>
    AsBody,

    /// <summary>As the glaze.</summary>
    AsGlaze,

    /// <summary>As the ware that was glazed before.</summary>
    AsHost,

    /// <summary>Not a question.</summary>
    NotApplicable,
}
