namespace ConeService.Firing;

/// <summary>
/// How long a computation may go on. The loops of this assembly ask as they go, so that one that nobody waits for any more ends soon,
/// however deep it is. It belongs to the flow of the caller, as the language of its sentences does.
/// </summary>
public static class Patience
{
    private static readonly AsyncLocal<CancellationToken> OfTheFlow = new();

    /// <summary>What ends the computations of this flow from now on.</summary>
    /// <param name="token">Cancelled when nobody waits any more.</param>
    public static void Use(CancellationToken token) => OfTheFlow.Value = token;

    /// <summary>Goes on, unless nobody waits.</summary>
    /// <exception cref="OperationCanceledException">Nobody waits.</exception>
    public static void Check() => OfTheFlow.Value.ThrowIfCancellationRequested();

    /// <summary>The same for what a computation goes through one by one.</summary>
    /// <exception cref="OperationCanceledException">Nobody waits; thrown while it is gone through.</exception>
    public static IEnumerable<T> Patiently<T>(this IEnumerable<T> source)
    {
        foreach (var item in source)
        {
            Check();
            yield return item;
        }
    }
}
