namespace ConeService.Data;

/// <summary>Runs every check on packages whose descriptors are sound.</summary>
internal static class PackageValidator
{
    private static readonly IReadOnlyList<IPackageRule> Rules =
    [
        new VersionInChangelogRule(),
        new FahrenheitMatchesCelsiusRule(),
        new EndPointRisesWithRateRule(),
        new EndPointRisesWithConeRule(),
        new UnseenSourceRule(),
        new PracticeSourceRule(),
        new ConePositionRule(),
        new ChartHasEndPointsRule(),
        new EnergyHasEndPointsRule(),
        new OverlayOwnChartRule(),
        new ThermocoupleToleranceRule(),
        new HeatWorkDefaultRule(),
        new SegmentTargetRule(),
        new TemplateSegmentsRule(),
        new ReductionTemperatureRule(),
        new ThicknessLimitRule(),
        new KilnDefaultRule(),
        new KilnMaterialRule(),
        new KilnSizeRule(),
        new ConeRangeRule(),
        new ConeRankRule(),
        new RateKeyRule(),
        new OverfireStepsRule(),
        new DisagreementConcernsRule(),
        new RangeOrderRule(),
        new PercentEvidenceRule(),
        new NoteEvidenceRule(),
        new CitedYearRule(),
        new SeenThroughRule(),
        new WitnessRule(),
        new ValueConfidenceRule(),
        new LimitRegisterRule(),
        new IngredientKnownRule(),
        new GasReleaseRule(),
        new MessageTextRule(),
        new TextRowRule(),
        new TextWordsRule(),
    ];

    /// <summary>Puts the tables together, and tells what is wrong with them.</summary>
    /// <param name="basePackage">The base package.</param>
    /// <param name="overlays">A studio's own.</param>
    /// <param name="faults">Is added to.</param>
    /// <param name="againstRules">Whether rows are held against the rules too, and not against the form of their tables alone.</param>
    public static PackageContent Check(
        LoadedPackage basePackage, IReadOnlyList<LoadedPackage> overlays, List<PackageFault> faults, bool againstRules)
    {
        OverlayNames(basePackage, overlays, faults);
        var tables = TableAssembler.Assemble(basePackage, overlays, faults);
        foreach (var typed in TypedTables.All.Where(t => !t.HasShape(basePackage.Descriptor, faults)))
            tables.GetValueOrDefault(typed.Name)?.Parts.ForEach(p => p.Distrust());
        Corrections.Apply(tables);
        foreach (var part in tables.Values.SelectMany(t => t.Parts))
            CellChecks.Run(part);
        // Form and order are judged by the ids a package was written with, everything after that by those of today.
        foreach (var table in tables.Values)
            RowOrderCheck.Run(table, tables);
        RenamedIdChecks.Run(tables);
        var renames = IdRenames.For(tables);
        RenamedCells.Rewrite(tables, renames);
        foreach (var table in tables.Values)
        {
            KeyChecks.Run(table);
            ReferenceChecks.Run(table, tables);
        }

        var content = new PackageContent([basePackage, .. overlays], tables, renames);
        if (!againstRules)
            return content;
        foreach (var rule in Rules.Where(r => r.Reads.All(content.Sound)))
            faults.AddRange(rule.Check(content));
        return content;
    }

    private static void OverlayNames(LoadedPackage basePackage, IReadOnlyList<LoadedPackage> overlays, List<PackageFault> faults)
    {
        var names = new HashSet<string>(StringComparer.Ordinal) { basePackage.Name };
        foreach (var overlay in overlays.Where(o => !names.Add(o.Name)))
            faults.Add(new PackageFault(overlay.Name, PackageDescriptor.FileName, null, "name", FaultRules.OverlayName,
                $"is '{overlay.Name}', the name of another package in use; every overlay needs a name of its own"));
    }
}
