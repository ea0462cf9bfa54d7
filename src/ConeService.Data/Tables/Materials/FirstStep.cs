namespace ConeService.Data;

/// <summary>What the first step over the best cone does to a body.</summary>
public enum FirstStep
{
    /// <summary>It warps.</summary>
    Warps,

    /// <summary>It tightens and loses what it was made for.</summary>
    Tightens,
}
