namespace ConeService.Firing.HeatWork.Logs;

/// <summary>A stretch of a log without a usable reading: between the samples before and after it runs a straight line.</summary>
/// <param name="Before">The sample before it.</param>
/// <param name="After">The sample after it.</param>
/// <param name="Index">Where the first unusable reading stood among the samples sent.</param>
internal readonly record struct CutStretch(HeatPoint Before, HeatPoint After, int Index)
{
    /// <summary>How long, h.</summary>
    public double Hours => After.Hours - Before.Hours;
}
