using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using ConeService.Contract.Json;
using ConeService.Contract.Loads;

namespace ConeService.Bench.LoadCheck;

/// <summary>The options of the contract, source-generated as in the service.</summary>
[JsonSerializable(typeof(LoadRequest))]
[JsonSerializable(typeof(LoadAnswer))]
internal sealed partial class BenchJsonContext : JsonSerializerContext;

internal static class BenchJson
{
    public static JsonSerializerOptions Options { get; } = Create();

    private static JsonSerializerOptions Create()
    {
        var options = new JsonSerializerOptions
        {
            PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
            UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
            AllowDuplicateProperties = false,
            Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        };
        options.Converters.Add(new JsonStringEnumConverter(JsonNamingPolicy.KebabCaseLower, allowIntegerValues: false));
        options.Converters.Add(new SentTextConverter());
        options.Converters.Add(new MessageConverter());
        options.TypeInfoResolverChain.Insert(0, BenchJsonContext.Default);
        options.MakeReadOnly();
        return options;
    }
}
