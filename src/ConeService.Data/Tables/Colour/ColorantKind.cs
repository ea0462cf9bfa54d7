namespace ConeService.Data;

/// <summary>What sort of colorant it is.</summary>
public enum ColorantKind
{
    /// <summary>A colouring oxide.</summary>
    Oxide,

    /// <summary>Made up and calcined.</summary>
    Stain,

    /// <summary>Makes a glaze white or cloudy.</summary>
    Opacifier,

    /// <summary>A metal film on a fired glaze.</summary>
    Lustre,

    /// <summary>Several oxides.</summary>
    Mixture,

    /// <summary>Colours by taking oxygen.</summary>
    Reducer,

    /// <summary>Told, not to be used.</summary>
    Historic,
}
