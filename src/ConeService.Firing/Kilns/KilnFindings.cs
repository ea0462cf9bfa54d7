using System.Globalization;
using ConeService.Contract.Answers;

namespace ConeService.Firing.Kilns;

/// <summary>What can be wrong with a kiln or a load, and where.</summary>
internal sealed class KilnFindings
{
    private readonly List<Finding> found = [];

    /// <summary>Refuses when anything was found.</summary>
    public void Refuse()
    {
        if (found.Count > 0) throw new RefusedException(found);
    }

    /// <summary>A number must lie in a range; true when it does, or is absent.</summary>
    public bool InRange(string field, double? value, double low, double high, string unit, string? likely = null)
    {
        if (value is null || (value >= low && value <= high)) return true;
        var range = string.Create(CultureInfo.InvariantCulture, $"{low} to {high} {unit}").TrimEnd();
        found.Add(new("kiln-number-out-of-range", field, Text(value), $"{Text(value)} is not a number that a kiln has here: {range}.", [range], likely));
        return false;
    }

    /// <summary>Neither volume nor dimensions.</summary>
    public void NoSize(string field) => found.Add(new(
        "kiln-size-missing", field, null, "The kiln has neither a volume nor inner dimensions; nothing can be reckoned without its size.", ["volumeLitres", "interior"]));

    /// <summary>A stated volume that the dimensions do not have.</summary>
    public void SizeConflict(string field, double stated, double reckoned) => found.Add(new(
        "kiln-size-conflict", field, Text(stated), $"The dimensions make {Text(Math.Round(reckoned, 1))} L, not {Text(stated)} L.",
        [string.Create(CultureInfo.InvariantCulture, $"{reckoned:0.#}")], "Outer dimensions, or centimetres for millimetres; leave one of the two out."));

    /// <summary>Dimensions that make no shape.</summary>
    public void NoShape(string field) => found.Add(Shapeless(field));

    /// <summary>The finding on dimensions that make no shape.</summary>
    public static Finding Shapeless(string field) => new(
        "kiln-size-conflict", field, null, "An interior is heightMillimetres with either diameterMillimetres, or widthMillimetres and depthMillimetres.",
        ["heightMillimetres, widthMillimetres, depthMillimetres", "heightMillimetres, diameterMillimetres"]);

    /// <summary>A wall of a material that is not in the table.</summary>
    public void UnknownWall(string field, string material, IReadOnlyList<string> walls) => found.Add(new(
        "kiln-wall-unknown", field, material, $"'{material}' is not a wall of kiln-materials.", [.. walls], NearMatches.Find(material, walls, 1) is [var near] ? $"{near}?" : null));

    /// <summary>A parameter that this heat, or another parameter, rules out.</summary>
    public void NotApplicable(string field, string value, string why) => found.Add(new("kiln-parameter-not-applicable", field, value, why, []));

    /// <summary>Power that no kiln of the size has.</summary>
    public void AbsurdPower(string field, double kilowatts, double low, double high) => found.Add(new(
        "kiln-power-absurd", field, Text(kilowatts), $"No kiln of this size has {Text(kilowatts)} kW.",
        [string.Create(CultureInfo.InvariantCulture, $"{low:0.##} to {high:0.#} kW")],
        kilowatts > high ? "Watts for kilowatts, or the size is too small?" : "The size is too large, or the unit is not kW?"));

    /// <summary>A number as text.</summary>
    public static string Text(double? value) => value?.ToString(CultureInfo.InvariantCulture) ?? "";
}
