namespace ConeService.Contract.Colours;

/// <summary>Whence an ingredient is known.</summary>
public enum IngredientOrigin
{
    /// <summary>The caller stated it.</summary>
    Stated,

    /// <summary>The base brings it.</summary>
    Base,

    /// <summary>A stated colorant brings it.</summary>
    Contained,
}
