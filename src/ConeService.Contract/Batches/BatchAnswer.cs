using ConeService.Contract.Answers;

namespace ConeService.Contract.Batches;

/// <summary>Several questions answered, in the order asked; none is left out.</summary>
/// <typeparam name="T">The answer to one.</typeparam>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Answered">Number of questions with an answer.</param>
/// <param name="Refused">Number of questions with problems instead.</param>
/// <param name="Items">The questions, in the order asked.</param>
public sealed record BatchAnswer<T>(string DatasetVersion, int Answered, int Refused, IReadOnlyList<BatchResult<T>> Items)
    where T : class;

/// <summary>One question answered.</summary>
/// <typeparam name="T">The answer.</typeparam>
/// <param name="Number">Number of the question, from 1.</param>
/// <param name="Answer">The answer, as the question alone would be answered; null where it was refused.</param>
/// <param name="Problems">What is wrong with the question; empty when it was answered. Of all questions together, beyond the first of
/// each, the first 50.</param>
/// <param name="MoreProblems">How much more is wrong with it than problems lists.</param>
public sealed record BatchResult<T>(int Number, T? Answer, IReadOnlyList<Finding> Problems, int MoreProblems = 0)
    where T : class;
