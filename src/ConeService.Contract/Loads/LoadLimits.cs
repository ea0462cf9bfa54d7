namespace ConeService.Contract.Loads;

/// <summary>How much one load may hold.</summary>
public static class LoadLimits
{
    /// <summary>The most pieces of one request.</summary>
    public const int MostPieces = 2000;

    /// <summary>The most pieces of all loads of one request.</summary>
    public const int MostPiecesTogether = 5 * MostPieces;

    /// <summary>The most coats of a piece.</summary>
    public const int MostCoats = 12;

    /// <summary>The most coats of all pieces of one request together: four each for as many pieces as a load may have.</summary>
    public const int MostCoatsTogether = 4 * MostPieces;

    /// <summary>The most earlier firings of a piece.</summary>
    public const int MostEarlierFirings = 12;

    /// <summary>The most loads of one request.</summary>
    public const int MostLoads = 50;

    /// <summary>The most further kilns of a studio.</summary>
    public const int MostKilns = 20;

    /// <summary>The most firings that a studio offers.</summary>
    public const int MostOffered = 50;

    /// <summary>The longest side of a piece, mm.</summary>
    public const double MostMillimetres = 5000;
}
