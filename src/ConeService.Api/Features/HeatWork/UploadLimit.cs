using ConeService.Contract.HeatWork;
using Microsoft.AspNetCore.Http.Metadata;

namespace ConeService.Api.Features.HeatWork;

/// <summary>Logs are larger than what other addresses read: 10 MB instead of 1.</summary>
internal sealed class UploadLimit : IRequestSizeLimitMetadata
{
    /// <summary>Largest log, bytes.</summary>
    public long? MaxRequestBodySize => HeatWorkLimits.MostUploadBytes;
}
