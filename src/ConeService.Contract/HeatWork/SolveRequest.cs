using System.ComponentModel.DataAnnotations;
using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.Equations;
using ConeService.Contract.Requests;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Contract.HeatWork;

/// <summary>A programme with one open value: which one puts the cone just down?</summary>
[Needs(nameof(Units), nameof(Segments), nameof(Cone), nameof(Find))]
public sealed record SolveRequest : HeatWorkRequest
{
    /// <summary>The cone to put just down, as text.</summary>
    [RegularExpression(ConeSpelling.Pattern)]
    public SentText Cone { get; init; }

    /// <summary>peak, hold or rate: which value of the hottest segment is asked for. What it holds now is not used.</summary>
    [AllowedValues("peak", "hold", "rate")]
    public string? Find { get; init; }
}

/// <summary>The value that puts the cone just down.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Cone">The cone.</param>
/// <param name="Chart">The chart.</param>
/// <param name="Find">What was asked for.</param>
/// <param name="Feasible">True when there is such a value.</param>
/// <param name="Segment">The segment that was changed, the hottest; from 1.</param>
/// <param name="Celsius">The peak, °C; null unless asked for and feasible.</param>
/// <param name="Fahrenheit">The peak, °F.</param>
/// <param name="HoldMinutes">The hold, minutes; null unless asked for and feasible.</param>
/// <param name="CelsiusPerHour">The rate of the segment, °C/h; null unless asked for and feasible.</param>
/// <param name="FahrenheitPerHour">The rate, °F/h.</param>
/// <param name="OtherProgress">Progress that the rest of the programme makes without the part asked for; for a peak, with the
/// lowest one; 100 stands for over 100.</param>
/// <param name="Why">Why there is no such value; null when there is.</param>
/// <param name="Instead">What would be feasible; null when the value is, or nothing near is.</param>
/// <param name="HeatWork">The whole firing with the value put in, or with what would be feasible; null without either.</param>
/// <param name="Notes">What a user of the value must know.</param>
/// <param name="Basis">What the curve of the cone rests on at the rate of the segment.</param>
/// <param name="Confidence">The weakest of the cells that the curve of the cone goes through; a solved value is derived at best.</param>
/// <param name="Sources">Ids of the sources.</param>
/// <param name="Assumed">Parameters that were left out, with what was taken.</param>
public sealed record SolveAnswer(
    string DatasetVersion,
    string Cone,
    string Chart,
    string Find,
    bool Feasible,
    int Segment,
    double? Celsius,
    double? Fahrenheit,
    double? HoldMinutes,
    double? CelsiusPerHour,
    double? FahrenheitPerHour,
    double OtherProgress,
    Message? Why,
    SolveInstead? Instead,
    HeatWorkAnswer? HeatWork,
    IReadOnlyList<Message> Notes,
    Basis Basis,
    Confidence Confidence,
    IReadOnlyList<string> Sources,
    IReadOnlyList<Assumption> Assumed) : IComputed
{
    Address IComputed.Explain => EquationIds.Address(Find switch
    {
        "hold" => EquationIds.HoldForACone,
        "rate" => EquationIds.RateForACone,
        _ => EquationIds.PeakForACone,
    });
}

/// <summary>A programme near the one asked about that does put the cone just down.</summary>
/// <param name="Message">What to change.</param>
/// <param name="Celsius">The peak, °C.</param>
/// <param name="Fahrenheit">The peak, °F.</param>
/// <param name="CelsiusPerHour">The rate of the segment, °C/h; null for full speed.</param>
/// <param name="HoldMinutes">The hold, minutes.</param>
public sealed record SolveInstead(Message Message, double Celsius, double Fahrenheit, double? CelsiusPerHour, double HoldMinutes);
