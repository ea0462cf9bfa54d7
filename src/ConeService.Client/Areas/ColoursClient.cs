using System.Globalization;
using ConeService.Client.Asking;
using ConeService.Contract.Answers;
using ConeService.Contract.Batches;
using ConeService.Contract.Colours;
using ConeService.Contract.Cones;

namespace ConeService.Client;

/// <summary>What colour will it be? Raises <see cref="RefusedException"/> and <see cref="ConeServiceAwayException"/>.</summary>
public interface IColoursClient
{
    /// <summary>The colorants, with the words that questions about colour are asked in.</summary>
    /// <param name="cancel">Ends the wait.</param>
    Task<Answered<ColorantList>> ListColorantsAsync(CancellationToken cancel = default);

    /// <summary>One colorant, with everything told of it.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="cancel">Ends the wait.</param>
    Task<Answered<ColorantDetail>> DescribeColorantAsync(string id, CancellationToken cancel = default);

    /// <summary>The colours of a colorant; without one, every colorant that gives a colour.</summary>
    /// <param name="query">What is known of glaze, firing and colour.</param>
    /// <param name="cancel">Ends the wait.</param>
    Task<Answered<ColourAnswer>> FindAsync(ColourQuery query, CancellationToken cancel = default);

    /// <summary>The colour of a recipe, and the same recipe in oxidation and in reduction.</summary>
    /// <param name="request">Colorants and additives in percent, base, atmosphere and cone.</param>
    /// <param name="cancel">Ends the wait.</param>
    Task<Answered<ColourResolution>> ResolveAsync(ColourRequest request, CancellationToken cancel = default);

    /// <summary>The colours of several recipes, in the order asked; what is refused carries its problems.</summary>
    /// <param name="request">1 to 100 recipes.</param>
    /// <param name="cancel">Ends the wait.</param>
    Task<Answered<BatchAnswer<ColourResolution>>> ResolveEachAsync(ColourBatchRequest request, CancellationToken cancel = default);
}

/// <summary>What is asked about a colour; all of it may be left out.</summary>
/// <param name="Colorant">A colorant or a form of it: copper, copper-carbonate, Fe2O3; null: every colorant.</param>
/// <param name="Atmosphere">oxidation, neutral, reduction, salt-soda, post-fire-reduction or local-reduction; null: oxidation and
/// reduction side by side.</param>
/// <param name="Base">The base glaze, such as calcium, tin or boron; null: any.</param>
/// <param name="Cone">The cone; null: any.</param>
/// <param name="Percent">Percent of the colorant, added to 100 of glaze; null: any.</param>
/// <param name="KilnHeat">How the kiln is heated: electric, gas, wood, raku or vapour, which raises cautions; null: not said.</param>
/// <param name="Colour">Only notes of this colour word, such as green; null: all.</param>
public sealed record ColourQuery(
    string? Colorant = null, string? Atmosphere = null, string? Base = null, Cone? Cone = null, decimal? Percent = null,
    string? KilnHeat = null, string? Colour = null);

internal sealed class ColoursClient(IAnswerer answerer) : IColoursClient
{
    public Task<Answered<ColorantList>> ListColorantsAsync(CancellationToken cancel) =>
        answerer.AskAsync(new Question<ColorantList>("/v1/colorants", static (r, _) => r.Colours.Colorants()), cancel);

    public Task<Answered<ColorantDetail>> DescribeColorantAsync(string id, CancellationToken cancel) => answerer.AskAsync(
        new Question<ColorantDetail>($"/v1/colorants/{Addresses.Part(id)}", (r, _) => r.Colours.Colorant(id)), cancel);

    public Task<Answered<ColourAnswer>> FindAsync(ColourQuery query, CancellationToken cancel)
    {
        var (cone, percent) = (query.Cone?.ToString(), query.Percent?.ToString(CultureInfo.InvariantCulture));
        return answerer.AskAsync(
            new Question<ColourAnswer>(
                Addresses.Of(
                    "/v1/colours", ("colorant", query.Colorant), ("atmosphere", query.Atmosphere), ("base", query.Base), ("cone", cone),
                    ("percent", percent), ("kiln", query.KilnHeat), ("colour", query.Colour)),
                (r, _) => r.Colours.Find(
                    query.Colorant, query.Atmosphere, query.Base, cone, percent, query.KilnHeat, query.Colour)),
            cancel);
    }

    public Task<Answered<ColourResolution>> ResolveAsync(ColourRequest request, CancellationToken cancel) => answerer.AskAsync(
        new Question<ColourResolution>("/v1/colours/resolve", (r, _) => r.Colours.Resolve(request))
        {
            Check = () => ColourCheck.Require(request),
        }.With(request),
        cancel);

    public Task<Answered<BatchAnswer<ColourResolution>>> ResolveEachAsync(ColourBatchRequest request, CancellationToken cancel) =>
        answerer.AskAsync(
            new Question<BatchAnswer<ColourResolution>>("/v1/colours/resolve/batch", (r, _) => r.Colours.ResolveEach(request))
            {
                Check = () => BatchCheck.Require(request.Items),
                IsLong = true,
            }.With(request),
            cancel);
}
