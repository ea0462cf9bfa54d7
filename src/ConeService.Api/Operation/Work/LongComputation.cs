namespace ConeService.Api.Operation.Work;

/// <summary>An address whose caller says how long it may compute, beyond what every computation may.</summary>
/// <param name="Seconds">The longest that can be asked for, s.</param>
internal sealed record LongComputation(int Seconds);
