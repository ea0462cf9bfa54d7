namespace ConeService.Data;

/// <summary>How the fired body is.</summary>
public enum Porosity
{
    /// <summary>Soaks up water.</summary>
    Porous,

    /// <summary>Soaks up some.</summary>
    SemiPorous,

    /// <summary>Soaks up little.</summary>
    Low,

    /// <summary>Nearly dense.</summary>
    SemiVitreous,

    /// <summary>Dense.</summary>
    Vitreous,

    /// <summary>As the clay body fired so.</summary>
    AsBody,

    /// <summary>As the ware that was glazed before.</summary>
    AsHost,

    /// <summary>Not a question.</summary>
    NotApplicable,
}
