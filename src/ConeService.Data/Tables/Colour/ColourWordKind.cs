namespace ConeService.Data;

/// <summary>What a colour word says.</summary>
public enum ColourWordKind
{
    /// <summary>Hue.</summary>
    Hue,

    /// <summary>Lightness or strength.</summary>
    Tone,

    /// <summary>Surface or texture.</summary>
    Surface,
}
