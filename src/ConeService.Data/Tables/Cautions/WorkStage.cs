namespace ConeService.Data;

/// <summary>A stage of the work with clay, glaze and kiln.</summary>
public enum WorkStage
{
    /// <summary>Weighing and mixing materials.</summary>
    Mixing,

    /// <summary>Putting glaze, slip or lustre on.</summary>
    Glazing,

    /// <summary>Loading the kiln.</summary>
    Loading,

    /// <summary>The firing up to its end.</summary>
    Firing,

    /// <summary>Cooling with the kiln shut.</summary>
    Cooling,

    /// <summary>Opening and unloading.</summary>
    Opening,

    /// <summary>Cleaning and repairing kiln and shelves.</summary>
    Maintenance,

    /// <summary>Use of the finished ware.</summary>
    Use,
}
