using ConeService.Data;
using ConeService.Firing.Colours;
using ConeService.Firing.Cones;
using ConeService.Firing.HeatWork;
using ConeService.Firing.Kilns;
using ConeService.Firing.Loads;
using ConeService.Firing.Materials;
using ConeService.Firing.Schedules;
using ConeService.Firing.Schedules.Fitting;

namespace ConeService.Firing;

/// <summary>
/// The one door into every computation over a data package. Built whole and at once: what cannot be built from the package
/// is a fault of the package. Immutable; for use by many callers at the same time.
/// </summary>
public sealed class FiringReference
{
    private FiringReference(Dataset dataset)
    {
        Dataset = dataset;
        var charts = new ConeCharts(dataset);
        var book = new ScheduleCatalogue(dataset);
        Cones = new(charts);
        var (calculator, model, loads) = (new HeatWorkCalculator(charts), new KilnModel(dataset), new LoadCheck(charts));
        HeatWork = new(calculator);
        Schedules = new(book, charts, new ScheduleFitter(book, charts, model, loads));
        Kilns = new(calculator, model);
        Materials = new(charts.Scale, new MaterialCatalogue(charts));
        Colours = new(new ColourCatalogue(charts));
        Loads = new(loads, new LoadRuleCatalogue(dataset), dataset.VersionId);
        Practice = new(dataset);
        Study = new(dataset, Cones);
        Package = new(dataset);
    }

    /// <summary>The data package.</summary>
    public Dataset Dataset { get; }

    /// <summary>The scale, the charts, look-ups and conversions.</summary>
    public ConeReference Cones { get; }

    /// <summary>What firings did, and what would put a cone down.</summary>
    public HeatWorkReference HeatWork { get; }

    /// <summary>Schedules and programmes fitted from them.</summary>
    public ScheduleReference Schedules { get; }

    /// <summary>What firings tell of their kiln.</summary>
    public KilnReference Kilns { get; }

    /// <summary>Clay bodies, glazes and decorations.</summary>
    public MaterialReference Materials { get; }

    /// <summary>Loads and pairings, and the rules they are judged by.</summary>
    public LoadReference Loads { get; }

    /// <summary>Colorants and colours.</summary>
    public ColourReference Colours { get; }

    /// <summary>Processes, cautions and limits.</summary>
    public PracticeReference Practice { get; }

    /// <summary>Faults, landmarks, terms, and what everyday words are about.</summary>
    public StudyReference Study { get; }

    /// <summary>The package and its bibliography.</summary>
    public PackageReference Package { get; }

    /// <summary>Builds every computation over a package.</summary>
    /// <exception cref="InvalidPackageException">The package lacks something that a computation needs; carries every fault.</exception>
    public static FiringReference Open(Dataset dataset)
    {
        var faults = Requirements.Of(dataset);
        if (faults.Count > 0) throw new InvalidPackageException(faults);
        try
        {
            return new(dataset);
        }
        catch (Exception failure)
            when (failure is KeyNotFoundException or InvalidOperationException or FormatException or ArgumentException)
        {
            // A need that no capability states yet: told as a fault of the package rather than met by a request.
            throw new InvalidPackageException([Requirements.Fault(
                dataset, "datapackage", null, $"can't be computed with: {failure.Message}")]);
        }
    }

    /// <summary>What the computations need of a package and do not find there; empty when all can be built. A requirement for the
    /// loader.</summary>
    public static IEnumerable<PackageFault> Faults(Dataset dataset)
    {
        try
        {
            _ = Open(dataset);
            return [];
        }
        catch (InvalidPackageException invalid)
        {
            return invalid.Faults;
        }
    }
}
