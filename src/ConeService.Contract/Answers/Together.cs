namespace ConeService.Contract.Answers;

/// <summary>Tries one part of a question after the other, so that what is wrong with one hides nothing of the others.</summary>
internal sealed class Together
{
    private readonly List<Finding> findings = [];

    /// <summary>What was found so far; readers that collect add to it.</summary>
    public List<Finding> Findings => findings;

    /// <summary>True when anything was found.</summary>
    public bool Any => findings.Count > 0;

    /// <summary>Tries a part.</summary>
    /// <param name="part">May refuse.</param>
    /// <param name="otherwise">What is taken where it does.</param>
    public T? Try<T>(Func<T> part, T? otherwise = default)
    {
        try
        {
            return part();
        }
        catch (RefusedException refused)
        {
            findings.AddRange(refused.Findings);
            return otherwise;
        }
    }

    /// <summary>Tries a check.</summary>
    /// <param name="check">May refuse.</param>
    public void Try(Action check) => Try<object?>(() =>
    {
        check();
        return null;
    });

    /// <summary>Refuses when anything was found.</summary>
    /// <exception cref="RefusedException">Carries every finding, each once.</exception>
    public void Done()
    {
        if (findings.Count > 0) throw new RefusedException([.. findings.DistinctBy(f => (f.Code, f.Field))]);
    }
}
