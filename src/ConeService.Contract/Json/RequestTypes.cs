using System.Text.Json.Serialization.Metadata;
using ConeService.Contract.Colours;
using ConeService.Contract.Conversions;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Kilns;
using ConeService.Contract.Loads;
using ConeService.Contract.Plans;
using ConeService.Contract.Schedules;

namespace ConeService.Contract.Json;

/// <summary>The types that stand in requests.</summary>
internal static class RequestTypes
{
    private static readonly Type[] Bodies =
    [
        typeof(CalibrateRequest), typeof(ColourRequest), typeof(CompareRequest), typeof(ConversionRequest), typeof(FitRequest),
        typeof(ForecastRequest), typeof(HeatWorkRequest), typeof(LoadRequest), typeof(PairingRequest), typeof(PlanRequest),
        typeof(SolveRequest),
    ];

    /// <summary>All of them: the bodies and whatever these hold.</summary>
    public static HashSet<Type> All()
    {
        var found = new HashSet<Type>();
        var open = new Queue<Type>(Bodies);
        while (open.TryDequeue(out var next))
        {
            var type = Nullable.GetUnderlyingType(next) ?? next;
            if (ConeJsonContext.Default.GetTypeInfo(type) is not { } known) continue;
            if (known is { Kind: JsonTypeInfoKind.Enumerable, ElementType: { } element })
            {
                open.Enqueue(element);
            }
            else if (type.Assembly == typeof(RequestTypes).Assembly && found.Add(type))
            {
                foreach (var property in known.Properties) open.Enqueue(property.PropertyType);
            }
        }

        return found;
    }
}
