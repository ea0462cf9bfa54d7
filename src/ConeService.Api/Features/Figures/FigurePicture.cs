using System.Reflection;
using ConeService.Api.Http;
using SkiaSharp;
using Svg.Skia;
using Svg.Skia.TypefaceProviders;

namespace ConeService.Api.Features.Figures;

/// <summary>A figure as PNG, for places that refuse SVG. It is always on light ground, as a picture can't follow its reader.</summary>
internal static class FigurePicture
{
    /// <summary>Its media type.</summary>
    public const string MediaType = "image/png";

    // Sharp on screens of two dots a pixel, and when it is printed.
    private const float Scale = 2;

    private const int Best = 100;

    /// <summary>Draws a figure.</summary>
    /// <param name="svg">The figure as SVG.</param>
    public static PreparedBody Draw(string svg)
    {
        using var drawing = new SKSvg();
        drawing.Settings.TypefaceProviders!.Clear();
        drawing.Settings.TypefaceProviders.Add(new Letters());
        // What follows the reader or the printer is left out with its rules: only the rules for light ground stay.
        if (drawing.FromSvg(OnLightGround(svg)) is null) throw new InvalidOperationException("The figure could not be drawn.");
        using var bytes = new MemoryStream();
        drawing.Save(bytes, SKColors.White, SKEncodedImageFormat.Png, Best, Scale, Scale);
        return new(bytes.ToArray(), MediaType);
    }

    private static string OnLightGround(string svg)
    {
        for (var from = svg.IndexOf("@media", StringComparison.Ordinal); from >= 0; from = svg.IndexOf("@media", StringComparison.Ordinal))
            svg = svg.Remove(from, svg.IndexOf("}}", from, StringComparison.Ordinal) + 2 - from);
        return svg;
    }

    // An image that runs the service has no fonts: the letters are in the assembly, whatever family is asked for.
    private sealed class Letters : ITypefaceProvider
    {
        private static readonly Lazy<SKTypeface> Regular = new(() => Read("fonts/DejaVuSans.ttf"));
        private static readonly Lazy<SKTypeface> Bold = new(() => Read("fonts/DejaVuSans-Bold.ttf"));

        public SKTypeface? FromFamilyName(
            string fontFamily, SKFontStyleWeight fontWeight, SKFontStyleWidth fontWidth, SKFontStyleSlant fontStyle) =>
            fontWeight >= SKFontStyleWeight.SemiBold ? Bold.Value : Regular.Value;

        private static SKTypeface Read(string name) =>
            SKTypeface.FromStream(Assembly.GetExecutingAssembly().GetManifestResourceStream(name)!);
    }
}
