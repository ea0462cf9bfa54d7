namespace ConeService.Api.Http.Problems;

/// <summary>A kind of problem, with the text of its help page.</summary>
/// <param name="Code">Stable name; the type of a problem is /problems/{code}.</param>
/// <param name="Status">HTTP status code.</param>
/// <param name="Title">The kind in a few words.</param>
/// <param name="Meaning">What it means, for a person.</param>
/// <param name="Remedy">What to do about it.</param>
internal sealed record ProblemKind(string Code, int Status, string Title, string Meaning, string Remedy);
