using ConeService.Contract.Answers;

namespace ConeService.Firing;

/// <summary>Refuses an id that no row has, with the ids that are near.</summary>
internal static class NotFound
{
    /// <summary>The refusal.</summary>
    /// <param name="noun">What sort of thing was asked for.</param>
    /// <param name="id">The id as sent.</param>
    /// <param name="known">The ids that there are.</param>
    /// <param name="list">Address of the list.</param>
    public static RefusedException Refuse(string noun, string id, IEnumerable<string> known, string list)
    {
        var near = NearMatches.Find(id, known);
        return new(new Finding(
            "not-found", "id", id, $"There is no {noun} “{id}”.", near, near.Count > 0 ? $"Probably {near[0]}." : $"All are listed at {list}."));
    }
}
