using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Data;

namespace ConeService.Contract.Materials;

/// <summary>Clay bodies.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Cone">The cone asked for; null for all.</param>
/// <param name="Atmosphere">The atmosphere asked for; null for all.</param>
/// <param name="ClayBodies">The bodies, by id; those of overlays follow.</param>
public sealed record ClayBodyList(string DatasetVersion, string? Cone, [property: AtmosphereWords(AtmosphereUse.Firing)] Atmosphere? Atmosphere, IReadOnlyList<ClayBodySummary> ClayBodies);

/// <summary>A clay body in a list.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Name">What it is called.</param>
/// <param name="Description">What it is made of.</param>
/// <param name="Bisque">Cones of its bisque.</param>
/// <param name="Mature">Cones at which it is mature; null where its base clay decides.</param>
/// <param name="Atmospheres">Atmospheres it is used in.</param>
/// <param name="RangeConfidence">How far the cones can be trusted.</param>
/// <param name="Sources">Ids of the sources.</param>
public sealed record ClayBodySummary(
    string Id, string Name, string? Description, ConeSpan Bisque, MatureSpan? Mature, [property: AtmosphereWords(AtmosphereUse.Firing)] IReadOnlyList<Atmosphere> Atmospheres, Confidence RangeConfidence, IReadOnlyList<string> Sources);

/// <summary>Two ends of a range of cones.</summary>
/// <param name="Min">Lowest.</param>
/// <param name="Max">Highest.</param>
public sealed record ConeSpan(string Min, string Max);

/// <summary>A range of cones with the best of them.</summary>
/// <param name="Min">Lowest.</param>
/// <param name="Best">Best; null where the body decides.</param>
/// <param name="Max">Highest; null where the body decides.</param>
public sealed record MatureSpan(string Min, string? Best, string? Max);

/// <summary>One clay body with what happens outside its range.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="ClayBody">The row of the data package.</param>
/// <param name="OverfireSteps">Where each harm begins above the best cone.</param>
/// <param name="Disagreements">Where sources contradict each other on it.</param>
public sealed record ClayBodyDetail(string DatasetVersion, ClayBodyRow ClayBody, IReadOnlyList<OverfireStepAt> OverfireSteps, IReadOnlyList<DisagreementRow> Disagreements);

/// <summary>Where a harm begins.</summary>
/// <param name="Step">The harm.</param>
/// <param name="ConesOverBest">Whole cones over the best cone.</param>
/// <param name="Cone">The first cone at which it is reached; null beyond cone 14.</param>
public sealed record OverfireStepAt(OverfireStep Step, decimal ConesOverBest, string? Cone);

/// <summary>Glazes and decorations.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Cone">The cone asked for; null for all.</param>
/// <param name="Atmosphere">The atmosphere asked for; null for all.</param>
/// <param name="Glazes">The coats, by id; those of overlays follow.</param>
public sealed record GlazeList(string DatasetVersion, string? Cone, [property: AtmosphereWords(AtmosphereUse.Firing)] Atmosphere? Atmosphere, IReadOnlyList<GlazeSummary> Glazes);

/// <summary>A coat in a list.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Name">What it is called.</param>
/// <param name="Kind">What sort of coat it is.</param>
/// <param name="Range">Its cones.</param>
/// <param name="Atmospheres">Atmospheres in which it gives what it is meant to give.</param>
/// <param name="FiredIn">Kinds of firing it is fired in.</param>
/// <param name="RunRisk">How readily it runs above its range.</param>
/// <param name="RangeConfidence">How far the cones and atmospheres can be trusted.</param>
/// <param name="Sources">Ids of the sources.</param>
public sealed record GlazeSummary(
    string Id,
    string Name,
    CoatKind Kind,
    MatureSpan Range,
    [property: AtmosphereWords(AtmosphereUse.Firing)] IReadOnlyList<Atmosphere> Atmospheres,
    IReadOnlyList<FiringKind> FiredIn,
    RunRisk RunRisk,
    Confidence RangeConfidence,
    IReadOnlyList<string> Sources);

/// <summary>One coat with what happens outside its range.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Glaze">The row of the data package.</param>
/// <param name="Disagreements">Where sources contradict each other on it.</param>
public sealed record GlazeDetail(string DatasetVersion, GlazeRow Glaze, IReadOnlyList<DisagreementRow> Disagreements);

/// <summary>The load rules.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="LoadRules">The rules; those with reason codes are applied by the load check.</param>
public sealed record LoadRuleList(string DatasetVersion, IReadOnlyList<LoadRuleRow> LoadRules);

/// <summary>One load rule.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="LoadRule">The rule.</param>
/// <param name="Disagreements">Where sources contradict each other on it.</param>
public sealed record LoadRuleDetail(string DatasetVersion, LoadRuleRow LoadRule, IReadOnlyList<DisagreementRow> Disagreements);

/// <summary>The kinds of firing, and the kilns.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="FiringKinds">What each kind of firing needs and does.</param>
/// <param name="KilnHeats">What follows from what heats a kiln.</param>
/// <param name="Disagreements">Where sources contradict each other on them.</param>
public sealed record FiringKindList(string DatasetVersion, IReadOnlyList<FiringKindRow> FiringKinds, IReadOnlyList<KilnHeatRow> KilnHeats, IReadOnlyList<DisagreementRow> Disagreements);

/// <summary>Where sources contradict each other.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Disagreements">The disagreements.</param>
public sealed record DisagreementList(string DatasetVersion, IReadOnlyList<DisagreementRow> Disagreements);
