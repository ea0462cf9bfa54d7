using Microsoft.AspNetCore.Http.Metadata;

namespace ConeService.Api.Features.HeatWork;

/// <summary>Logs are larger than what other addresses read: 10 MB instead of 1.</summary>
internal sealed class UploadLimit : IRequestSizeLimitMetadata
{
    /// <summary>Largest log, bytes: a day of samples by the second is 2 MB.</summary>
    public long? MaxRequestBodySize => 10 * 1024 * 1024;
}
