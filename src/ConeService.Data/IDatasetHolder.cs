namespace ConeService.Data;

/// <summary>Holds the data package in use; it may be swapped for a newer valid one while running.</summary>
public interface IDatasetHolder
{
    /// <summary>The package in use now.</summary>
    Dataset Current { get; }

    /// <summary>Raised after <see cref="Current"/> was swapped.</summary>
    event EventHandler<DatasetSwappedEventArgs>? Swapped;
}

/// <summary>Tells which package came into use.</summary>
/// <param name="dataset">The package now in use.</param>
public sealed class DatasetSwappedEventArgs(Dataset dataset) : EventArgs
{
    /// <summary>The package now in use.</summary>
    public Dataset Dataset { get; } = dataset;
}
