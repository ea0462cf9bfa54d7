namespace ConeService.Contract.Schedules;

/// <summary>The coat on the ware when the firing starts.</summary>
public enum GlazeCoat
{
    /// <summary>No coat.</summary>
    None,

    /// <summary>Glazed, and dry since.</summary>
    Dry,

    /// <summary>Glazed within the last hours: the ware has drunk the water of the glaze.</summary>
    Fresh,
}
