namespace ConeService.Data;

/// <summary>What an atmosphere is said of.</summary>
public enum AtmosphereUse
{
    /// <summary>A firing, a kiln, a body, a coat, a schedule or a process.</summary>
    Firing,

    /// <summary>A question on colour, or a rule of colours.</summary>
    Colour,

    /// <summary>A note on a colour, which may hold in all of them.</summary>
    ColourNote,

    /// <summary>Of gases given off and wires that age: in air, without enough of it, or in both.</summary>
    Reaction,
}
