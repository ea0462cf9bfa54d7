using ConeService.Contract.Answers;
using ConeService.Contract.Materials;
using ConeService.Firing.Cones;
using ConeService.Firing.Materials;

namespace ConeService.Firing;

/// <summary>Clay bodies, glazes and decorations with their cones, and what happens outside them.</summary>
public sealed class MaterialReference
{
    private readonly ConeScale scale;
    private readonly MaterialCatalogue catalogue;

    internal MaterialReference(ConeScale scale, MaterialCatalogue catalogue) => (this.scale, this.catalogue) = (scale, catalogue);

    /// <summary>Clay bodies that are mature at a cone and used in an atmosphere; without either, all.</summary>
    /// <exception cref="RefusedException">A filter can't be read; carries every finding.</exception>
    public ClayBodyList Bodies(string? cone = null, string? atmosphere = null) =>
        catalogue.Bodies(MaterialFilter.Read(scale, cone, atmosphere));

    /// <summary>A clay body.</summary>
    /// <exception cref="RefusedException">There is none of that id.</exception>
    public ClayBodyDetail Body(string id) => catalogue.Body(id);

    /// <summary>Glazes and decorations that suit a cone and an atmosphere; without either, all.</summary>
    /// <exception cref="RefusedException">A filter can't be read; carries every finding.</exception>
    public GlazeList Glazes(string? cone = null, string? atmosphere = null) =>
        catalogue.Glazes(MaterialFilter.Read(scale, cone, atmosphere));

    /// <summary>A glaze or decoration.</summary>
    /// <exception cref="RefusedException">There is none of that id.</exception>
    public GlazeDetail Glaze(string id) => catalogue.Glaze(id);
}
