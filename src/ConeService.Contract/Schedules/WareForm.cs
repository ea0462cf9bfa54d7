namespace ConeService.Contract.Schedules;

/// <summary>From how many sides heat comes to a wall of the ware.</summary>
public enum WareForm
{
    /// <summary>Hollowware: heat comes to a wall from both sides.</summary>
    Hollow,

    /// <summary>Flatware, as tiles, plates and platters: it lies on the shelf, and heat comes from one side.</summary>
    Flat,
}
