namespace ConeService.Data;

/// <summary>A validated data package: typed rows, version, checksums and change log. Immutable.</summary>
public sealed class Dataset
{
    /// <summary>
    /// Version of the package, SemVer 2.0; overlays stand in the build part:
    /// <c>1.0.0</c>, or <c>1.0.0+north-shed.2.1.0</c> with the overlay north-shed 2.1.0.
    /// </summary>
    public required string VersionId { get; init; }

    /// <summary>Title of the package.</summary>
    public required string Title { get; init; }

    /// <summary>Licence of the package, an SPDX id.</summary>
    public required string License { get; init; }

    /// <summary>The change log of the base package, Markdown as it stands in CHANGELOG.md.</summary>
    public required string ChangeLog { get; init; }

    /// <summary>SHA-256 over the checksums of all files of the base package and its overlays, hexadecimal.</summary>
    public required string Checksum { get; init; }

    /// <summary>The tables as files: base package first, then the overlays.</summary>
    public required IReadOnlyList<ResourceSummary> Resources { get; init; }

    /// <summary>The bibliography, by id.</summary>
    public required IReadOnlyList<SourceRow> Sources { get; init; }

    /// <summary>Every cone number that some chart prints, in the order in which they go down.</summary>
    public required IReadOnlyList<ConeRow> Cones { get; init; }

    /// <summary>The charts, by id; an overlay's charts follow.</summary>
    public required IReadOnlyList<ChartRow> Charts { get; init; }

    /// <summary>Every printed cell, by chart, cone and rate.</summary>
    public required IReadOnlyList<EndPointRow> EndPoints { get; init; }

    /// <summary>How cones behave.</summary>
    public required IReadOnlyList<ConeFactRow> ConeFacts { get; init; }

    /// <summary>Fitted slopes of the cones' curves.</summary>
    public required IReadOnlyList<BendingEnergyRow> BendingEnergies { get; init; }

    /// <summary>Tolerances of thermocouples, by id.</summary>
    public required IReadOnlyList<ThermocoupleToleranceRow> ThermocoupleTolerances { get; init; }

    /// <summary>What heat-work answers take for parameters left out, by id.</summary>
    public required IReadOnlyList<HeatWorkDefaultRow> HeatWorkDefaults { get; init; }

    /// <summary>Values adopted against the print, already applied to the other tables.</summary>
    public required IReadOnlyList<CorrectionRow> Corrections { get; init; }

    /// <summary>Hazards: who is exposed, when, and what controls them.</summary>
    public required IReadOnlyList<CautionRow> Cautions { get; init; }

    /// <summary>What heats kilns, one row for each word of the contract.</summary>
    public required IReadOnlyList<KilnHeatRow> KilnHeats { get; init; }

    /// <summary>The kinds of firing, one row for each word of the contract.</summary>
    public required IReadOnlyList<FiringKindRow> FiringKinds { get; init; }

    /// <summary>Clay bodies by id; those of overlays follow.</summary>
    public required IReadOnlyList<ClayBodyRow> ClayBodies { get; init; }

    /// <summary>Glazes and decorations by id; those of overlays follow.</summary>
    public required IReadOnlyList<GlazeRow> Glazes { get; init; }

    /// <summary>Rules of loading.</summary>
    public required IReadOnlyList<LoadRuleRow> LoadRules { get; init; }

    /// <summary>Where sources contradict each other.</summary>
    public required IReadOnlyList<DisagreementRow> Disagreements { get; init; }
}
