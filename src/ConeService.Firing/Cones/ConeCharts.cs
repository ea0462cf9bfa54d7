using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.Problems;
using ConeService.Contract.Quantities;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing.Cones;

/// <summary>All charts of a data package with their curves: the entry to every computation on cones. Immutable.</summary>
internal sealed class ConeCharts
{
    /// <summary>The chart answered from unless another is named, and the one whose shapes are borrowed.</summary>
    public const string DefaultChart = "witness-self-supporting";

    /// <summary>Id of the source of what was computed from the charts.</summary>
    public const string DerivedSource = "derived";

    private readonly Dictionary<string, ConeChart> byId;

    /// <summary>Builds every curve of the data package.</summary>
    public ConeCharts(Dataset dataset)
    {
        Dataset = dataset;
        Scale = new(dataset);
        var cells = dataset.EndPoints.ToLookup(e => e.Chart);
        var energies = dataset.BendingEnergies.ToDictionary(e => (e.Chart, e.Cone));
        var shapes = OwnCurves(DefaultChart, cells[DefaultChart], energies);
        var lenders = cells[DefaultChart].ToLookup(c => Cone.Parse(c.Cone));
        Charts = [.. dataset.Charts.Select(row => Build(row, cells[row.Id], energies, shapes, lenders))];
        byId = Charts.ToDictionary(c => c.Id, StringComparer.Ordinal);
    }

    /// <summary>What is missing from a package that charts and curves need: a default chart that a firing can be followed on.</summary>
    public static IEnumerable<PackageFault> Requires(Dataset dataset)
    {
        foreach (var fault in Requirements.Ids(
            dataset, "charts", [DefaultChart], dataset.Charts.Select(c => c.Id), "every look-up that names no chart"))
        {
            yield return fault;
            yield break;
        }

        if (!dataset.EndPoints.Any(e => e.Chart == DefaultChart && e.RateCelsiusPerHour is not null))
        {
            yield return Requirements.Fault(
                dataset, "end-points", "rate_celsius_per_hour", $"has no cell of {DefaultChart} at a rate; nothing could be followed");
        }

        if (dataset.BendingEnergies.Count == 0) yield break;
        foreach (var fault in Requirements.Ids(
            dataset, "sources", [DerivedSource], dataset.Sources.Select(s => s.Id), "every computed end point"))
        {
            yield return fault;
        }
    }

    /// <summary>The data package.</summary>
    public Dataset Dataset { get; }

    /// <summary>The scale.</summary>
    public ConeScale Scale { get; }

    /// <summary>The charts, in the order of the data package.</summary>
    public IReadOnlyList<ConeChart> Charts { get; }

    /// <summary>The chart that is answered from unless another is named.</summary>
    public ConeChart Default => byId[DefaultChart];

    /// <summary>Whose curve one of the values borrows; null where none does.</summary>
    public BorrowedShape? BorrowedBy(params IEnumerable<EndPointValue> values) =>
        values.Any(v => v.Basis == Basis.Borrowed) ? new(DefaultChart, Default.Row.Source) : null;

    /// <summary>Finds a chart by its name.</summary>
    /// <param name="id">The name as the caller wrote it.</param>
    /// <param name="field">The parameter or JSON pointer, for the finding.</param>
    /// <param name="chart">The chart.</param>
    /// <param name="finding">What is wrong, with near matches; null on success.</param>
    public bool TryFind(string id, string field, out ConeChart chart, out Finding? finding)
    {
        finding = null;
        if (byId.TryGetValue(id, out chart!)) return true;
        finding = RenamedId.Of(Dataset, "charts", id, field);
        if (finding is not null) return false;
        var near = NearMatches.Find(id, byId.Keys);
        finding = new(
            FindingCodes.ChartUnknown, field, id, Message.Of("cones.chart-unknown", ("chart", id)),
            Message.Verbatim(near.Count > 0 ? near : byId.Keys),
            near.Count > 0 ? Message.Of("cones.chart-near", ("near", near[0])) : Message.Of("cones.charts-listed"));
        return false;
    }

    private static ConeChart Build(
        ChartRow row,
        IEnumerable<EndPointRow> cells,
        Dictionary<(string Chart, string Cone), BendingEnergyRow> energies,
        Dictionary<Cone, ConeCurve> shapes,
        ILookup<Cone, EndPointRow> lenders)
    {
        var rows = cells.ToList();
        var own = row.Id == DefaultChart ? shapes : OwnCurves(row.Id, rows, energies);
        return new(row, rows.GroupBy(c => Cone.Parse(c.Cone)).Select(g => new ChartCone(
            g.Key, [.. g.OrderBy(c => c.RateCelsiusPerHour)],
            own.GetValueOrDefault(g.Key), shapes.GetValueOrDefault(g.Key),
            shapes.ContainsKey(g.Key) ? [.. lenders[g.Key].OrderBy(c => c.RateCelsiusPerHour)] : [], Oddity(g.Key))));

        // A borrowed curve is as odd as it is on the chart that lends it.
        ConeOddity? Oddity(Cone cone) =>
            energies.GetValueOrDefault((own.ContainsKey(cone) ? row.Id : DefaultChart, cone.ToString()))?.Oddity;
    }

    private static Dictionary<Cone, ConeCurve> OwnCurves(
        string chart, IEnumerable<EndPointRow> cells, Dictionary<(string Chart, string Cone), BendingEnergyRow> energies)
    {
        var curves = new Dictionary<Cone, ConeCurve>();
        foreach (var group in cells.Where(c => c.RateCelsiusPerHour is not null).GroupBy(c => c.Cone))
        {
            // A cone whose points do not rise (kept as printed) has no fitted energy, and so no kinetics of its own.
            if (!energies.TryGetValue((chart, group.Key), out var energy)) continue;
            var points = group.OrderBy(c => c.RateCelsiusPerHour)
                .Select(c => ((double)c.RateCelsiusPerHour!.Value, Temperature.FromCelsius(c.Celsius).Kelvin)).ToList();
            curves[Cone.Parse(group.Key)] = new(points, (double)energy.ActivationEnergyKilojoulesPerMole * 1000);
        }

        return curves;
    }
}
