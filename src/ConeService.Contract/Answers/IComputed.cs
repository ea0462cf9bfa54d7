namespace ConeService.Contract.Answers;

/// <summary>
/// An answer that was computed. Its JSON gets the member <c>explain</c> from here (<see cref="Json.AnswerShapes"/>), so that no such
/// answer can lack it; beside it stands <c>confidence</c>, which tests/contract/law.mjs asks for.
/// </summary>
public interface IComputed
{
    /// <summary>Address of the equation or the rules that the answer comes from.</summary>
    Address Explain { get; }
}
