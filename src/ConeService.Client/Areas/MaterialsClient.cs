using ConeService.Client.Asking;
using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.Materials;

namespace ConeService.Client;

/// <summary>Clay bodies, glazes and decorations. Raises <see cref="RefusedException"/> and
/// <see cref="ConeServiceAwayException"/>.</summary>
public interface IMaterialsClient
{
    /// <summary>Clay bodies.</summary>
    /// <param name="cone">Only those that are mature at this cone; null: all.</param>
    /// <param name="atmosphere">Only those used in oxidation, neutral or reduction; null: all.</param>
    /// <param name="cancel">Ends the wait.</param>
    Task<Answered<ClayBodyList>> ListBodiesAsync(Cone? cone = null, string? atmosphere = null, CancellationToken cancel = default);

    /// <summary>One clay body.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="cancel">Ends the wait.</param>
    Task<Answered<ClayBodyDetail>> DescribeBodyAsync(string id, CancellationToken cancel = default);

    /// <summary>Glazes and decorations.</summary>
    /// <param name="cone">Only those that suit this cone; null: all.</param>
    /// <param name="atmosphere">Only those that suit oxidation, neutral or reduction; null: all.</param>
    /// <param name="cancel">Ends the wait.</param>
    Task<Answered<GlazeList>> ListGlazesAsync(Cone? cone = null, string? atmosphere = null, CancellationToken cancel = default);

    /// <summary>One glaze or decoration.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="cancel">Ends the wait.</param>
    Task<Answered<GlazeDetail>> DescribeGlazeAsync(string id, CancellationToken cancel = default);
}

internal sealed class MaterialsClient(IAnswerer answerer) : IMaterialsClient
{
    public Task<Answered<ClayBodyList>> ListBodiesAsync(Cone? cone, string? atmosphere, CancellationToken cancel) => answerer.AskAsync(
        new Question<ClayBodyList>(
            Addresses.Of("/v1/clay-bodies", ("cone", cone?.ToString()), ("atmosphere", atmosphere)),
            (r, _) => r.Materials.Bodies(cone?.ToString(), atmosphere)),
        cancel);

    public Task<Answered<ClayBodyDetail>> DescribeBodyAsync(string id, CancellationToken cancel) => answerer.AskAsync(
        new Question<ClayBodyDetail>($"/v1/clay-bodies/{Addresses.Part(id)}", (r, _) => r.Materials.Body(id)), cancel);

    public Task<Answered<GlazeList>> ListGlazesAsync(Cone? cone, string? atmosphere, CancellationToken cancel) => answerer.AskAsync(
        new Question<GlazeList>(
            Addresses.Of("/v1/glazes", ("cone", cone?.ToString()), ("atmosphere", atmosphere)),
            (r, _) => r.Materials.Glazes(cone?.ToString(), atmosphere)),
        cancel);

    public Task<Answered<GlazeDetail>> DescribeGlazeAsync(string id, CancellationToken cancel) => answerer.AskAsync(
        new Question<GlazeDetail>($"/v1/glazes/{Addresses.Part(id)}", (r, _) => r.Materials.Glaze(id)), cancel);
}
