using ConeService.Contract.Answers;
using ConeService.Contract.Kilns;

namespace ConeService.Contract.Plans;

/// <summary>What must hold of a kiln that is planned for. What heats it, and its highest cone, are judged by the load check.</summary>
internal static class PlanKilnCheck
{
    /// <summary>Most shelves side by side.</summary>
    public const int MostBeside = 20;

    /// <summary>Most layers of shelves.</summary>
    public const int MostLayers = 100;

    /// <summary>What is wrong with a kiln.</summary>
    /// <param name="sent">The kiln.</param>
    /// <param name="at">Its pointer.</param>
    public static IReadOnlyList<Finding> Of(PlanKiln? sent, string at)
    {
        var found = new PlanFound();
        if (sent?.Kiln is not { } kiln)
        {
            found.Missing(at + "/kiln");
            return found.Findings;
        }

        if (kiln.Id.IsAbsent || kiln.Id.Kind != SentKind.Text) found.Missing(at + "/kiln/id", kiln.Id.Text);
        Interior(kiln.Interior, at + "/kiln/interior", found);
        if (kiln.Shelves is { } shelves) Shelves(shelves, at + "/kiln/shelves", found);
        found.Within<PlanKiln>(sent.FillingFactor, nameof(PlanKiln.FillingFactor), at + "/fillingFactor");
        found.List(sent.Firings?.Count, PlanLimits.MostMenu, at + "/firings");
        foreach (var (firing, i) in PlanCheck.Listed(sent.Firings, PlanLimits.MostMenu)) Firing(firing, $"{at}/firings/{i}", found);
        found.AtMost(sent.Starts?.Count, PlanLimits.MostMoments, at + "/starts");
        foreach (var (start, i) in PlanCheck.Listed(sent.Starts, PlanLimits.MostMoments)) found.Moment(start, $"{at}/starts/{i}");
        found.AtMost(sent.Closed?.Count, PlanLimits.MostMoments, at + "/closed");
        found.Within<PlanKiln>(sent.LoadingMinutes, nameof(PlanKiln.LoadingMinutes), at + "/loadingMinutes");
        found.Within<PlanKiln>(sent.UnloadingMinutes, nameof(PlanKiln.UnloadingMinutes), at + "/unloadingMinutes");
        return [.. found.Findings, .. PlanCheck.Spans(sent.Closed, at + "/closed")];
    }

    private static void Firing(MenuFiring? sent, string at, PlanFound found)
    {
        if (sent is null) found.Missing(at);
        found.Within<MenuFiring>(sent?.Minutes, nameof(MenuFiring.Minutes), at + "/minutes");
        found.Within<MenuFiring>(sent?.KilowattHours, nameof(MenuFiring.KilowattHours), at + "/kilowattHours");
    }

    private static void Interior(Interior? sent, string at, PlanFound found)
    {
        if (sent is null)
        {
            found.Missing(at);
            return;
        }

        var before = found.Findings.Count;
        found.Millimetres(sent.HeightMillimetres, at + "/heightMillimetres");
        found.Millimetres(sent.WidthMillimetres, at + "/widthMillimetres");
        found.Millimetres(sent.DepthMillimetres, at + "/depthMillimetres");
        found.Millimetres(sent.DiameterMillimetres, at + "/diameterMillimetres");
        var isOpen = sent.HeightMillimetres.IsAbsent || (sent.DiameterMillimetres.IsAbsent && sent.WidthMillimetres.IsAbsent);
        if (isOpen && found.Findings.Count == before) found.Missing(at);
    }

    private static void Shelves(KilnShelves sent, string at, PlanFound found)
    {
        found.Millimetres(sent.WidthMillimetres, at + "/widthMillimetres");
        found.Millimetres(sent.DepthMillimetres, at + "/depthMillimetres");
        found.Millimetres(sent.DiameterMillimetres, at + "/diameterMillimetres");
        found.Millimetres(sent.ThicknessMillimetres, at + "/thicknessMillimetres");
        found.Count(sent.PerLayer, MostBeside, at + "/perLayer");
        found.Count(sent.Layers, MostLayers, at + "/layers");
    }
}
