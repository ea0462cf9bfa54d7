using ConeService.Contract.Answers;
using ConeService.Contract.Datasets;
using ConeService.Contract.Json;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Contract.Materials;

/// <summary>A clay body with its cone ranges and what happens outside them.</summary>
/// <param name="Id">Name of the body in its package.</param>
/// <param name="Name">What it is called in a sentence.</param>
/// <param name="Description">What it is made of.</param>
/// <param name="BisqueConeMin">Lowest cone of its bisque.</param>
/// <param name="BisqueConeMax">Highest cone of its bisque.</param>
/// <param name="MatureConeMin">Lowest cone at which it is mature; null, with the two others, where its base clay decides.</param>
/// <param name="MatureConeBest">The cone at which it is best.</param>
/// <param name="MatureConeMax">Highest cone it stands.</param>
/// <param name="FirstStep">What the first step over the best cone does.</param>
/// <param name="WarpConesOverBest">Whole cones over the best cone at which the first step comes; null where not known.</param>
/// <param name="BloatConesOverBest">Whole cones over the best cone at which it bloats or blisters.</param>
/// <param name="SlumpConesOverBest">Whole cones over the best cone at which it slumps.</param>
/// <param name="MeltConesOverBest">Whole cones over the best cone at which it melts.</param>
/// <param name="BloatConesSoonerInReduction">How many whole cones sooner it bloats in reduction; null where nothing is known.</param>
/// <param name="Underfired">What it is like below its range.</param>
/// <param name="Overfired">What it is like above its range.</param>
/// <param name="Shelf">How it sticks to the shelf.</param>
/// <param name="HoldsWater">Whether it holds water.</param>
/// <param name="ThermalShock">Whether it stands being drawn red hot.</param>
/// <param name="Atmospheres">Atmospheres it is used in.</param>
/// <param name="ColourOxidation">Colour in oxidation.</param>
/// <param name="ColourReduction">Colour in reduction.</param>
/// <param name="AbsorptionPercentMin">Water absorption in its range, lower end, %.</param>
/// <param name="AbsorptionPercentMax">Water absorption, upper end, %.</param>
/// <param name="ShrinkagePercentMin">Total shrinkage from wet to fired, lower end, %.</param>
/// <param name="ShrinkagePercentMax">Total shrinkage, upper end, %.</param>
/// <param name="ExpansionNote">What is known of its thermal expansion and glaze fit.</param>
/// <param name="UseNote">What it is used for.</param>
/// <param name="Cautions">Ids of the cautions that belong to it.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="RangeConfidence">How far the cone ranges can be trusted.</param>
/// <param name="Confidence">How far the row can be trusted.</param>
/// <param name="Note">What a reader must know about the row.</param>
/// <param name="Student">The row in plain sentences for a student, without ids; null where the data package has none.</param>
public sealed record ClayBody(
    string Id,
    string Name,
    string? Description,
    [property: RangeOf("bisque")] string BisqueConeMin,
    string BisqueConeMax,
    [property: RangeOf("mature")] string? MatureConeMin,
    string? MatureConeBest,
    string? MatureConeMax,
    FirstStep FirstStep,
    decimal? WarpConesOverBest,
    decimal? BloatConesOverBest,
    decimal? SlumpConesOverBest,
    decimal? MeltConesOverBest,
    decimal? BloatConesSoonerInReduction,
    string Underfired,
    string Overfired,
    string? Shelf,
    HoldsWater HoldsWater,
    ThermalShock ThermalShock,
    [property: AtmosphereWords(AtmosphereUse.Firing)] IReadOnlyList<Atmosphere> Atmospheres,
    string? ColourOxidation,
    string? ColourReduction,
    [property: RangeOf("absorptionPercent")] decimal? AbsorptionPercentMin,
    decimal? AbsorptionPercentMax,
    [property: RangeOf("shrinkagePercent")] decimal? ShrinkagePercentMin,
    decimal? ShrinkagePercentMax,
    string? ExpansionNote,
    string? UseNote,
    IReadOnlyList<string> Cautions,
    IReadOnlyList<string> Sources,
    Confidence RangeConfidence,
    Confidence Confidence,
    string? Note,
    Message? Student = null)
{
    /// <summary>Address of its row of the data package, with the places in its sources.</summary>
    public Address Row => TableAddress.Of("clay-bodies", Id);
}
