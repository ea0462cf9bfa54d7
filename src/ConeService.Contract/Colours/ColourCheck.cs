using System.Globalization;
using ConeService.Contract.Answers;
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
        Message[] colorants = [string.Create(CultureInfo.InvariantCulture, $"1 to {Most} colorants")];
        check.Require(request.Colorants is { Count: > 0 }, "empty-request", "/colorants", null, "The recipe holds no colorants.", colorants);
        check.Require(
            request.Colorants is null or { Count: <= Most }, "too-many-ingredients", "/colorants", null,
            string.Create(CultureInfo.InvariantCulture, $"The recipe holds {request.Colorants?.Count} colorants."), colorants);
        check.Require(
            request.Additives is null or { Count: <= Most }, "too-many-ingredients", "/additives", null,
            string.Create(CultureInfo.InvariantCulture, $"The recipe holds {request.Additives?.Count} additives."),
            [string.Create(CultureInfo.InvariantCulture, $"0 to {Most} additives")]);
        check.Done();
    }
}
