using System.Globalization;
using ConeService.Contract.Answers;
using ConeService.Contract.Schedules;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>
/// What the pieces say of the load beyond what it says itself: the wettest and the thickest of them decide how it is fired. What can't
/// be read in a piece, the load check refuses.
/// </summary>
internal static class PiecesAsLoad
{
    // From dry to wet.
    private static readonly PieceState[] Raw = [PieceState.BoneDry, PieceState.LeatherHard, PieceState.Wet];

    /// <summary>The load with the dryness and the thickness of its pieces, where they are wetter or thicker than it says.</summary>
    /// <param name="load">The load as sent.</param>
    /// <param name="green">True for a schedule that takes ware that was never fired.</param>
    /// <param name="assumed">What was taken from the pieces is added here.</param>
    public static FitLoad Of(FitLoad load, bool green, List<Assumption> assumed)
    {
        if (load.Pieces is not { Count: > 0 } pieces) return load;
        var wettest = pieces.Select(p => State(p?.State)).Max();
        if (green && wettest >= 0 && (load.Dryness is null || (Stated(load.Dryness) is >= 0 and var stated && wettest > stated)))
        {
            var word = EnumWords.Word(Raw[wettest]);
            assumed.Add(new("load.dryness", word, Message.Of("schedules.assumed-wettest-piece")));
            load = load with { Dryness = word };
        }

        var thickest = pieces.Select(p => Number(p?.ThickestMillimetres)).Max();
        if (thickest is not { } millimetres || millimetres <= load.ThickestMillimetres) return load;
        assumed.Add(new(
            "load.thickestMillimetres", millimetres.ToString(CultureInfo.InvariantCulture),
            Message.Of("schedules.assumed-thickest-piece")));
        return load with { ThickestMillimetres = millimetres };
    }

    private static int State(SentText? sent) =>
        EnumWords.TryRead<PieceState>(sent?.Text, out var state) ? Array.IndexOf(Raw, state) : -1;

    private static int Stated(string dryness) => EnumWords.TryRead<PieceState>(dryness, out var state) ? Array.IndexOf(Raw, state) : -1;

    private static double? Number(SentText? sent) =>
        sent is { Kind: SentKind.Number, Text: { } text }
        && double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && number is >= 1 and <= 400
            ? number
            : null;
}
