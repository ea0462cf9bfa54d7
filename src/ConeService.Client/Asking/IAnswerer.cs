using ConeService.Contract.Answers;

namespace ConeService.Client.Asking;

/// <summary>Answers questions, from wherever.</summary>
internal interface IAnswerer
{
    /// <summary>The answer.</summary>
    /// <exception cref="RefusedException">The question can't be answered as asked.</exception>
    /// <exception cref="ConeServiceAwayException">Nobody answered.</exception>
    Task<Answered<T>> AskAsync<T>(Question<T> question, CancellationToken cancel);
}
