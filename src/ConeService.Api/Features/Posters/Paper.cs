namespace ConeService.Api.Features.Posters;

/// <summary>A size of paper, upright.</summary>
internal enum Paper
{
    /// <summary>210 × 297 mm (ISO 216).</summary>
    A4,

    /// <summary>8.5 × 11 in.</summary>
    Letter,

    /// <summary>297 × 420 mm (ISO 216).</summary>
    A3,
}

/// <summary>How large papers are.</summary>
internal static class PaperSizes
{
    /// <summary>Margin on each side, mm; printers reach that far.</summary>
    public const double Margin = 12;

    /// <summary>What may be printed on, mm.</summary>
    public static (double Width, double Height) Room(this Paper paper)
    {
        var (width, height) = paper switch
        {
            Paper.A3 => (297.0, 420.0),
            Paper.Letter => (215.9, 279.4),
            _ => (210.0, 297.0),
        };
        return (width - (2 * Margin), height - (2 * Margin));
    }

    /// <summary>Its name in a style sheet.</summary>
    public static string Css(this Paper paper) => paper == Paper.Letter ? "letter" : paper.ToString();
}
