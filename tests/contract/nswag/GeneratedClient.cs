using System.Text.Json;
using System.Text.Json.Serialization;

namespace ConeService.Client;

/// <summary>The part of the client that its maker leaves to the caller.</summary>
public partial class ConeServiceClient
{
    // The generated code converts single words and leaves the words of lists to these settings.
    static partial void UpdateJsonSerializerSettings(JsonSerializerOptions settings) =>
        settings.Converters.Add(new JsonStringEnumConverter());
}
