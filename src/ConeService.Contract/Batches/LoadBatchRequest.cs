using ConeService.Contract.Loads;
using ConeService.Contract.Requests;

namespace ConeService.Contract.Batches;

/// <summary>Loads to be judged, each by itself.</summary>
/// <param name="Items">1 to 50 loads.</param>
[Needs(nameof(Items))]
public sealed record LoadBatchRequest([property: Items(1, LoadLimits.MostLoads)] IReadOnlyList<LoadRequest?>? Items);
