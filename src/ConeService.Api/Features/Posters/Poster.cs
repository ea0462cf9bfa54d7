namespace ConeService.Api.Features.Posters;

/// <summary>A page to print, before it is put on paper.</summary>
/// <param name="Path">Its address below /posters.</param>
/// <param name="Title">Its title.</param>
/// <param name="Pages">What stands on each sheet.</param>
/// <param name="Sources">Ids of its sources.</param>
internal sealed record Poster(string Path, string Title, IReadOnlyList<PosterSheet> Pages, IReadOnlyList<string> Sources);
