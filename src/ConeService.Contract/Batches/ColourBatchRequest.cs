using ConeService.Contract.Colours;
using ConeService.Contract.Requests;

namespace ConeService.Contract.Batches;

/// <summary>Recipes whose colours are asked for.</summary>
/// <param name="Items">1 to 100 recipes.</param>
[Needs(nameof(Items))]
public sealed record ColourBatchRequest([property: Items(1, BatchCheck.Most)] IReadOnlyList<ColourRequest?>? Items);
