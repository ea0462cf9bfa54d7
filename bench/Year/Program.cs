using System.Globalization;
using ConeService.Bench.Year;

// A year of a studio: planned each Monday, beside the keeper's rule in the same year. Arguments: search steps a plan, pieces a week.
var steps = args.Length > 0 ? int.Parse(args[0], CultureInfo.InvariantCulture) : 400;
double[] loads = args.Length > 1 ? [double.Parse(args[1], CultureInfo.InvariantCulture)] : [30, 45];
Console.WriteLine(
    "| seed | pieces a week | who | done | late | firings | kWh a piece | against the rule | announced "
    + "| moved or given up | days to done |");
Console.WriteLine("| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |");
foreach (var load in loads)
{
    foreach (var seed in new[] { 1, 2, 3 })
    {
        var studio = new Studio(seed, load);
        var keeper = KeeperYear.Run(studio);
        Tell("the keeper's rule", keeper);
        var least = KeeperYear.LeastEnergy(studio);
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"| {seed} | {load:0} | every kiln full to the last place | | | | {least:0.00} "
            + $"| {100 * ((least / keeper.EnergyEach) - 1):+0;-0;0} % | | | |"));
        Tell("the rule, 90 % full", KeeperYear.Run(studio, 9000));
        foreach (var (weeks, fill, spare) in new (int, int, int?)[] { (3, 70, null), (3, 95, null), (2, 95, null), (3, 95, 14) })
        {
            var year = new PlannedYear(studio, weeks, steps, seed, spare, 100 * fill);
            Tell($"plan, {weeks} weeks, {fill} % full{(spare is null ? "" : $", unfilled waits while {spare} days are to spare")}",
                await year.RunAsync());
        }

        void Tell(string who, Outcome o) => Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"| {seed} | {load:0} | {who} | {o.Done} | {o.Late} | {o.Firings} | {o.EnergyEach:0.00} "
            + $"| {100 * ((o.EnergyEach / keeper.EnergyEach) - 1):+0;-0;0} % "
            + $"| {o.Announced} | {o.Undone} | {o.Days:0.0} |"));
    }
}
