using ConeService.Contract.Answers;
using ConeService.Contract.Texts;

namespace ConeService.Contract.Problems;

/// <summary>An error, as RFC 9457 has it.</summary>
/// <param name="Type">What kind of problem it is; resolves to a help page.</param>
/// <param name="Title">The kind of problem in a few words.</param>
/// <param name="Status">HTTP status code.</param>
/// <param name="Detail">What went wrong this time, in sentences that can be shown to a person.</param>
/// <param name="Errors">What was found wrong, each with field, value, what is allowed and the likely mistake: the first 50.</param>
/// <param name="TraceId">Finds the request in the log of who runs the service; the trace of <c>traceparent</c> where that was sent.</param>
/// <param name="MoreErrors">How much more was found than errors lists.</param>
public sealed record Problem(
    string Type, Message Title, int Status, Message Detail, IReadOnlyList<Finding> Errors, string? TraceId = null,
    int MoreErrors = 0);
