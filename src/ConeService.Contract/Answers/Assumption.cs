using ConeService.Contract.Texts;

namespace ConeService.Contract.Answers;

/// <summary>A parameter that the caller left out, and what was taken instead.</summary>
/// <param name="Parameter">Name of the parameter.</param>
/// <param name="Value">What was taken.</param>
/// <param name="Reason">Why that.</param>
public sealed record Assumption(string Parameter, string Value, Message Reason);
