
namespace ConeService.Contract.HeatWork;

/// <summary>Names of the columns of an uploaded log, where its header leaves a choice.</summary>
/// <param name="Time">The time; null: found by its name.</param>
/// <param name="Temperature">The temperature; null: found by its name.</param>
public sealed record LogColumnNames(string? Time = null, string? Temperature = null);
