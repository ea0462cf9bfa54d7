using ConeService.Contract.Colours;
using ConeService.Contract.Conversions;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Kilns;
using ConeService.Contract.Loads;
using ConeService.Contract.Schedules;

namespace ConeService.Contract.Json;

/// <summary>The types that stand in requests.</summary>
internal static class RequestTypes
{
    private static readonly Type[] Bodies =
    [
        typeof(CalibrateRequest), typeof(ColourRequest), typeof(CompareRequest), typeof(ConversionRequest), typeof(FitRequest),
        typeof(ForecastRequest), typeof(HeatWorkRequest), typeof(LoadRequest), typeof(PairingRequest), typeof(SolveRequest),
    ];

    /// <summary>All of them: the bodies and whatever these hold.</summary>
    public static HashSet<Type> All()
    {
        var found = new HashSet<Type>();
        var open = new Queue<Type>(Bodies);
        while (open.TryDequeue(out var type))
        {
            if (type.IsGenericType)
            {
                foreach (var argument in type.GetGenericArguments()) open.Enqueue(argument);
            }
            else if (type.Assembly == typeof(RequestTypes).Assembly && found.Add(type))
            {
                foreach (var property in type.GetProperties()) open.Enqueue(property.PropertyType);
            }
        }

        return found;
    }
}
