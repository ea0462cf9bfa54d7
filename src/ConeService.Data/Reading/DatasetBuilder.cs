using System.Collections.ObjectModel;

namespace ConeService.Data;

/// <summary>Makes the dataset out of content that has no faults.</summary>
internal static class DatasetBuilder
{
    public static Dataset Build(PackageContent content)
    {
        var basePackage = content.Packages[0];
        return new Dataset
        {
            VersionId = VersionId(content.Packages),
            Name = basePackage.Name,
            // The bytes of the embedded package stay where they are.
            Files = basePackage.IsEmbedded ? new EmbeddedPackageFiles() : basePackage.Snapshot,
            Title = basePackage.Descriptor.Title!,
            License = basePackage.Descriptor.License!,
            ChangeLog = basePackage.ChangeLog!,
            Checksum = PackageChecksum.OfPackages(content.Packages.Select(p => p.Snapshot)),
            Resources = [.. content.Packages.SelectMany(p => Resources(p, content))],
            Tables = [.. content.Tables.Values.Where(t => t.Parts.Count > 0).OrderBy(t => t.Schema.Name, StringComparer.Ordinal)
                .Select(t => new PackageTable(t))],
            Warnings = [.. LostZeros.Of(content)],
            Sources = Rows(content, TypedTables.Sources),
            Citations = CitationIndex.Of(content),
            Cones = Rows(content, TypedTables.Cones),
            Charts = Rows(content, TypedTables.Charts),
            EndPoints = EndPoints(content),
            ConeFacts = Rows(content, TypedTables.ConeFacts),
            BendingEnergies = Rows(content, TypedTables.BendingEnergies),
            ThermocoupleTolerances = Rows(content, TypedTables.ThermocoupleTolerances),
            ThermocoupleLimits = Rows(content, TypedTables.ThermocoupleLimits),
            ThermocoupleAgeing = Rows(content, TypedTables.ThermocoupleAgeing),
            HeatWorkDefaults = Rows(content, TypedTables.HeatWorkDefaults),
            Equations = Rows(content, TypedTables.Equations) is { Count: > 0 } own ? own : EmbeddedTable.Read(TypedTables.Equations),
            Corrections = Rows(content, TypedTables.Corrections),
            Messages = Rows(content, TypedTables.Messages),
            Texts = Rows(content, TypedTables.Texts),
            RenamedIds = Array.AsReadOnly([.. content.Renames.Rows]),
            Cautions = Rows(content, TypedTables.Cautions),
            ScheduleTemplates = Rows(content, TypedTables.ScheduleTemplates),
            ScheduleSegments = Rows(content, TypedTables.ScheduleSegments),
            ThicknessLimits = Rows(content, TypedTables.ThicknessLimits),
            ScheduleDefaults = Rows(content, TypedTables.ScheduleDefaults),
            Procedures = Rows(content, TypedTables.Procedures),
            Attendances = Rows(content, TypedTables.Attendances),
            KilnDefaults = Rows(content, TypedTables.KilnDefaults),
            KilnMaterials = Rows(content, TypedTables.KilnMaterials),
            KilnSizes = Rows(content, TypedTables.KilnSizes),
            LoadingDefaults = Rows(content, TypedTables.LoadingDefaults),
            Altitudes = Rows(content, TypedTables.Altitudes),
            KilnHeats = Rows(content, TypedTables.KilnHeats),
            FiringKinds = Rows(content, TypedTables.FiringKinds),
            ClayBodies = Rows(content, TypedTables.ClayBodies),
            Glazes = Rows(content, TypedTables.Glazes),
            UsualFirings = Rows(content, TypedTables.UsualFirings),
            TradeWords = Rows(content, TypedTables.TradeWords),
            LoadRules = Rows(content, TypedTables.LoadRules),
            Disagreements = Rows(content, TypedTables.Disagreements),
            AbsorptionClasses = Rows(content, TypedTables.AbsorptionClasses),
            OxideExpansions = Rows(content, TypedTables.OxideExpansions),
            ExposureLimits = Rows(content, TypedTables.ExposureLimits),
            FoodContactLimits = Rows(content, TypedTables.FoodContactLimits),
            Landmarks = Rows(content, TypedTables.Landmarks),
            Processes = Rows(content, TypedTables.Processes),
            ProcessAdditions = Rows(content, TypedTables.ProcessAdditions),
            Faults = Rows(content, TypedTables.Faults),
            FaultCauses = Rows(content, TypedTables.FaultCauses),
            GasReleases = Rows(content, TypedTables.GasReleases),
            Terms = Rows(content, TypedTables.Terms),
            Additives = Rows(content, TypedTables.Additives),
            BaseGlazes = Rows(content, TypedTables.BaseGlazes),
            Colorants = Rows(content, TypedTables.Colorants),
            ColorantForms = Rows(content, TypedTables.ColorantForms),
            TemperatureLimits = Rows(content, TypedTables.TemperatureLimits),
            ColourNotes = Rows(content, TypedTables.ColourNotes),
            ColourWords = Rows(content, TypedTables.ColourWords),
            ColourRules = Rows(content, TypedTables.ColourRules),
            ColourRuleIngredients = Rows(content, TypedTables.ColourRuleIngredients),
        };
    }

    // A correction names the row by its key, or by the key of packages before 1.7.
    private static ReadOnlyCollection<EndPointRow> EndPoints(PackageContent content)
    {
        var corrected = Rows(content, TypedTables.Corrections)
            .Where(c => c is { Table: "end-points", Field: "fahrenheit" }).Select(c => c.Key).ToHashSet(StringComparer.Ordinal);
        return Array.AsReadOnly([.. content.Rows(TypedTables.EndPoints).Select(r => r.Row with
        {
            IsFahrenheitCorrected = corrected.Contains($"{r.Row.Chart}/{r.Row.Cone}/{r.Row.Rate}")
                || (r.Row.RateCelsiusPerHour is null && corrected.Contains($"{r.Row.Chart}/{r.Row.Cone}/")),
        })]);
    }

    private static string VersionId(IReadOnlyList<LoadedPackage> packages)
    {
        var overlays = string.Join('.', packages.Skip(1).Select(o => $"{o.Name}.{o.Descriptor.Version}"));
        return packages[0].Descriptor.Version + (overlays.Length > 0 ? "+" + overlays : "");
    }

    private static IEnumerable<ResourceSummary> Resources(LoadedPackage package, PackageContent content)
    {
        foreach (var schema in package.Descriptor.Tables)
        {
            var bytes = package.Snapshot.Files[schema.Path];
            var rows = content.Tables[schema.Name].Parts.Single(p => p.Package == package.Name).Rows.Count;
            yield return new ResourceSummary(package.Name, schema.Name, schema.Path, schema.Title, rows, bytes.Length,
                package.Snapshot.Hash(schema.Path));
        }
    }

    // Wrapped, so that nobody can cast the list back and change what every request reads.
    private static ReadOnlyCollection<T> Rows<T>(PackageContent content, TypedTable<T> table) =>
        Array.AsReadOnly([.. content.Rows(table).Select(r => r.Row)]);
}
