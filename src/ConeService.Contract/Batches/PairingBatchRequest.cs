using ConeService.Contract.Loads;
using ConeService.Contract.Requests;

namespace ConeService.Contract.Batches;

/// <summary>Pairings to be judged, each by itself.</summary>
/// <param name="Items">1 to 100 pairings.</param>
[Needs(nameof(Items))]
public sealed record PairingBatchRequest([property: Items(1, BatchCheck.Most)] IReadOnlyList<PairingRequest?>? Items);
