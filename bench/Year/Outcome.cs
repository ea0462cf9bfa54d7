namespace ConeService.Bench.Year;

/// <summary>What a year came to.</summary>
/// <param name="Done">Pieces that got all their firings.</param>
/// <param name="Late">Pieces done after their date, or not at all though it was in the year.</param>
/// <param name="Firings">Firings.</param>
/// <param name="KilowattHours">Energy.</param>
/// <param name="Announced">Firings that were announced for the two weeks to come.</param>
/// <param name="Undone">Announced firings that were moved or given up.</param>
/// <param name="Days">Mean days from ready to done.</param>
internal sealed record Outcome(int Done, int Late, int Firings, double KilowattHours, int Announced, int Undone, double Days)
{
    public double EnergyEach => KilowattHours / Done;

    public static Outcome Of(
        Studio studio, IReadOnlyList<(int Kiln, int Menu)> firings, IReadOnlyList<(Batch Batch, int Count, int At)> done, int announced,
            int undone)
    {
        var late = done.Where(d => d.At > d.Batch.Due).Sum(d => d.Count);
        var end = Studio.Weeks * Studio.Week;
        foreach (var batch in studio.Batches.Where(b => b.Due < end))
            late += batch.Count - done.Where(d => d.Batch == batch).Sum(d => d.Count);
        var pieces = done.Sum(d => d.Count);
        return new(
            pieces, late, firings.Count, firings.Sum(f => Studio.Cost(f.Kiln, f.Menu) / 100.0), announced, undone,
            done.Sum(d => d.Count * (double)(d.At - d.Batch.Ready)) / pieces / Studio.Day);
    }
}
