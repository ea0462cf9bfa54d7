using System.IO.Compression;
using ConeService.Api.Http.Problems;
using Microsoft.AspNetCore.ResponseCompression;
using Microsoft.Extensions.Options;

namespace ConeService.Api.Http;

/// <summary>
/// Compression of computed answers by the framework, on the way out. Prepared answers keep their own compressed bytes and are left alone.
/// </summary>
/// <param name="services">The services.</param>
/// <param name="options">What is compressed.</param>
internal sealed class Compression(IServiceProvider services, IOptions<ResponseCompressionOptions> options)
    : ResponseCompressionProvider(services, options)
{
    public static void Add(IServiceCollection services)
    {
        services.AddSingleton<IResponseCompressionProvider, Compression>();
        services.AddResponseCompression(o =>
        {
            // Answers hold no secret that a caller could guess at by their length: there are none.
            o.EnableForHttps = true;
            o.MimeTypes =
                [.. ResponseCompressionDefaults.MimeTypes, "image/svg+xml", Csv.MediaType, "text/calendar", ProblemWriter.MediaType];
        });
        services.Configure<BrotliCompressionProviderOptions>(o => o.Level = CompressionLevel.Fastest);
        services.Configure<GzipCompressionProviderOptions>(o => o.Level = CompressionLevel.Fastest);
    }

    public override bool ShouldCompressResponse(HttpContext context)
    {
        var response = context.Response;
        return response.Headers.ContentEncoding.Count == 0 && response.ContentLength is not < Encodings.LeastBytes
            && base.ShouldCompressResponse(context);
    }
}
