using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;

namespace ConeService.Contract.Colours;

/// <summary>What must hold for a recipe as a whole; its ingredients are read one by one.</summary>
public static class ColourCheck
{
    /// <summary>Most colorants, and most additives, of a recipe.</summary>
    public const int Most = 20;

    /// <summary>Checks a recipe.</summary>
    /// <exception cref="RefusedException">Carries every finding.</exception>
    public static void Require(ColourRequest request)
    {
        var check = new RequestCheck();
        var allowed = Message.Of("colours.colorants-allowed", ("most", Most));
        check.Require(
            request.Colorants is { Count: > 0 }, FindingCodes.EmptyRequest, "/colorants", null,
            Message.Of("colours.no-colorants"), [allowed]);
        check.Require(
            request.Colorants is null or { Count: <= Most }, FindingCodes.TooManyIngredients, "/colorants", null,
            Message.Of("colours.too-many-colorants", ("count", request.Colorants?.Count)), [allowed]);
        check.Require(
            request.Additives is null or { Count: <= Most }, FindingCodes.TooManyIngredients, "/additives", null,
            Message.Of("colours.too-many-additives", ("count", request.Additives?.Count)),
            [Message.Of("colours.additives-allowed", ("most", Most))]);
        check.Done();
    }
}
