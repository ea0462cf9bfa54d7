using ConeService.Contract.Colours;
using ConeService.Data;

namespace ConeService.Firing.Colours;

/// <summary>What is in a glaze, as far as the caller said it and the base and the colorants imply it.</summary>
internal sealed class Recipe
{
    private readonly Dictionary<string, Ingredient> byId = new(StringComparer.Ordinal);

    /// <summary>Joins what was said with what it implies.</summary>
    public Recipe(
        ColourCatalogue catalogue,
        IReadOnlyList<RecipeColorant> colorants,
        IReadOnlyList<(string Id, decimal? Percent)> additives,
        BaseGlazeRow @base,
        FiringHeat? heat)
    {
        (Colorants, Base, Heat) = (colorants, @base, heat);
        foreach (var colorant in colorants) byId[colorant.Id] = new(colorant.Id, colorant.OxidePercent, IngredientOrigin.Stated);
        foreach (var (id, percent) in additives) byId.TryAdd(id, new(id, percent, IngredientOrigin.Stated));
        foreach (var id in @base.Contains) byId.TryAdd(id, new(id, null, IngredientOrigin.Base));
        foreach (var id in byId.Keys.ToList())
        {
            foreach (var inside in catalogue.Colorants.GetValueOrDefault(id)?.Contains ?? [])
                byId.TryAdd(inside, new(inside, null, IngredientOrigin.Contained));
        }

        // A glaze with tin, zinc or magnesia in it is also, in part, a glaze of that kind.
        ImpliedBases = [.. catalogue.Data.BaseGlazes
            .Where(b => b.Id != @base.Id && b.Contains.Count > 0 && b.Contains.All(c => Find(c)?.Origin == IngredientOrigin.Stated))
            .Select(b => b.Id)];
    }

    /// <summary>The colorants as said, in their order.</summary>
    public IReadOnlyList<RecipeColorant> Colorants { get; }

    /// <summary>The base; <c>any</c> where none was named.</summary>
    public BaseGlazeRow Base { get; }

    /// <summary>Bases that the additives imply.</summary>
    public IReadOnlyList<string> ImpliedBases { get; }

    /// <summary>The heat; null where no cone was named.</summary>
    public FiringHeat? Heat { get; }

    /// <summary>An ingredient, or null.</summary>
    public Ingredient? Find(string id) => byId.GetValueOrDefault(id);
}

/// <summary>A colorant of a recipe.</summary>
/// <param name="Weighed">The colorant and its form.</param>
/// <param name="Percent">Percentage of the form as sent; null where none was.</param>
internal sealed record RecipeColorant(WeighedAs Weighed, decimal? Percent)
{
    /// <summary>Id of the colorant.</summary>
    public string Id => Weighed.Colorant.Id;

    /// <summary>Percentage of the counted oxide.</summary>
    public decimal? OxidePercent => Weighed.Oxide(Percent);
}

/// <summary>One ingredient of a recipe.</summary>
/// <param name="Id">Id of a colorant or an additive.</param>
/// <param name="Percent">Percentage of the oxide; null where it was not stated.</param>
/// <param name="Origin">Whence it is known.</param>
internal sealed record Ingredient(string Id, decimal? Percent, IngredientOrigin Origin);
