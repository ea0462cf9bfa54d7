using ConeService.Data;
using ConeService.Firing.Colours;
using ConeService.Firing.Cones;
using ConeService.Firing.Equations;
using ConeService.Firing.HeatWork;
using ConeService.Firing.Loads;
using ConeService.Firing.Room;
using ConeService.Firing.Schedules;
using ConeService.Firing.Schedules.Fitting;

namespace ConeService.Firing;

/// <summary>
/// What the computations need of a package beyond the rules it must keep by itself: each capability states its own needs,
/// and what is missing is a fault like any other.
/// </summary>
internal static class Requirements
{
    /// <summary>Everything missing; empty when the computations can be built.</summary>
    public static IReadOnlyList<PackageFault> Of(Dataset dataset) =>
    [
        .. ConeCharts.Requires(dataset),
        .. HeatWorkDefaults.Requires(dataset),
        .. HeatSettings.Requires(dataset),
        .. ScheduleCatalogue.Requires(dataset),
        .. FitLandmarks.Requires(dataset),
        .. ColourCatalogue.Requires(dataset),
        .. LoadTables.Requires(dataset),
        .. RoomFactors.Requires(dataset),
        .. EquationCatalogue.Requires(dataset),
    ];

    /// <summary>Faults for the ids that a table lacks.</summary>
    /// <param name="dataset">The package.</param>
    /// <param name="table">Name of the table.</param>
    /// <param name="needed">Ids that are looked up.</param>
    /// <param name="present">Ids that are there.</param>
    /// <param name="by">What looks them up.</param>
    public static IEnumerable<PackageFault> Ids(
        Dataset dataset, string table, IEnumerable<string> needed, IEnumerable<string> present, string by) =>
        needed.Except(present, StringComparer.Ordinal).Select(id => Fault(dataset, table, "id", $"has no row '{id}'; {by} needs it"));

    /// <summary>A fault of a table.</summary>
    public static PackageFault Fault(Dataset dataset, string table, string? field, string reason) =>
        dataset.Fault(table, field, FaultRules.NeededByComputation, reason);
}
