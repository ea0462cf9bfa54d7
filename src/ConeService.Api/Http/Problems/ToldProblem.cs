namespace ConeService.Api.Http.Problems;

/// <summary>What a request was refused with, for the log.</summary>
/// <param name="Code">Code of the kind of problem.</param>
internal sealed record ToldProblem(string Code);
