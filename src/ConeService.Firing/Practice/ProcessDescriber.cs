using ConeService.Contract.Practice;
using ConeService.Contract.Quantities;
using ConeService.Data;

namespace ConeService.Firing.Practice;

/// <summary>Answers on firing processes.</summary>
/// <param name="data">The data package.</param>
internal sealed class ProcessDescriber(Dataset data)
{
    private readonly CautionDescriber cautions = new(data);

    /// <summary>Every process.</summary>
    public ProcessList List() => new(data.VersionId, Notices.LocalCodes, Notices.LeachTest, data.Processes);

    /// <summary>One process with what is added, its cautions, and what can be said of food.</summary>
    public ProcessDetail Describe(ProcessRow process)
    {
        var added = data.ProcessAdditions.Where(a => a.Process == process.Id).Select(Added).ToList();
        var links = cautions.Links(process.Cautions);
        var limits = cautions.ExposureLimits(process.Cautions);
        var food = Food(process);
        IEnumerable<IEnumerable<string>> cited =
            [process.Sources, .. added.Select(a => a.Sources), .. links.Select(l => l.Sources), .. limits.Select(l => l.Sources), .. food.Limits.Select(l => l.Sources)];
        return new(data.VersionId, Notices.LocalCodes, process, food, added, links, limits, [.. cited.SelectMany(s => s).Distinct()]);
    }

    private FoodContactAnswer Food(ProcessRow process)
    {
        var asked = process.FoodContact != ProcessFoodContact.NotApplicable;
        return new(process.FoodContact, Notices.LeachTest, process.FoodContactNote, asked ? [.. data.FoodContactLimits.Where(l => l.Standing != FoodLimitStanding.Historic)] : []);
    }

    private static AddedMaterial Added(ProcessAdditionRow row) => new(
        row.Material,
        row.When,
        row.CelsiusLow,
        row.CelsiusHigh,
        Fahrenheit(row.CelsiusLow),
        Fahrenheit(row.CelsiusHigh),
        row.ConeLow,
        row.ConeHigh,
        row.Sources,
        row.Confidence,
        row.Note);

    private static decimal? Fahrenheit(decimal? celsius) => celsius is { } value ? Temperature.ToFahrenheit(value) : null;
}
