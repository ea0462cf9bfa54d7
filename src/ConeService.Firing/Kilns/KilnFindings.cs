using System.Globalization;
using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Requests;
using ConeService.Contract.Texts;

namespace ConeService.Firing.Kilns;

/// <summary>What can be wrong with a kiln or a load, and where.</summary>
internal sealed class KilnFindings
{
    private static readonly string[] OfElectricKilns =
        [FindingCodes.KilnParameterNotApplicable, FindingCodes.KilnPowerAbsurd, FindingCodes.MemberMissing];

    private readonly List<Finding> found = [];

    /// <summary>Takes a finding made elsewhere.</summary>
    public void Add(Finding finding) => found.Add(finding);

    /// <summary>What was found.</summary>
    public IReadOnlyList<Finding> All => found;

    /// <summary>Refuses when anything was found.</summary>
    public void Refuse()
    {
        if (found.Count > 0) throw new RefusedException(found);
    }

    /// <summary>A number must lie in a range; true when it does, or is absent.</summary>
    public bool InRange(string field, double? value, Bounds bounds, string unit, Message? likely = null) => InRange(
        field, value, bounds,
        unit.Length > 0
            ? Message.Of("kilns.range", ("low", bounds.Low), ("high", bounds.High), ("unit", unit))
            : Message.Of("kilns.range-without-unit", ("low", bounds.Low), ("high", bounds.High)),
        likely);

    /// <summary>A number must lie in a range that is said in words; true when it does, or is absent.</summary>
    public bool InRange(string field, double? value, Bounds bounds, Message range, Message? likely = null)
    {
        if (value is not { } number || bounds.Contain(number)) return true;
        found.Add(new(
            FindingCodes.KilnNumberOutOfRange, field, Text(value),
            Message.Of("kilns.out-of-range", ("sent", value), ("range", range)), [range], likely));
        return false;
    }

    /// <summary>Neither volume nor dimensions.</summary>
    public void NoSize(string field) => found.Add(new(
        FindingCodes.MemberMissing, field, null, Message.Of("kilns.size-missing"), Message.Verbatim(["volumeLitres", "interior"])));

    /// <summary>A stated volume that the dimensions do not have.</summary>
    public void SizeConflict(string field, double stated, double reckoned) => found.Add(new(
        FindingCodes.KilnSizeConflict, field, Text(stated),
        Message.Of("kilns.size-conflict", ("litres", Math.Round(reckoned, 1)), ("stated", stated)),
        Message.Verbatim([string.Create(CultureInfo.InvariantCulture, $"{reckoned:0.#}")]), Message.Of("kilns.size-conflict-mistake")));

    /// <summary>Takes what was refused of a kiln; what is told already of a form that can't be read is not missing besides.</summary>
    /// <param name="refused">The refusal.</param>
    /// <param name="findings">Where its findings go.</param>
    /// <param name="isHeatKnown">False where the kiln was read as an electric one although nobody knows: what only rules that out is no
    /// finding.</param>
    public static void Take(RefusedException refused, List<Finding> findings, bool isHeatKnown = true) => findings.AddRange(refused.Findings
        .Where(f => f.Code != FindingCodes.MemberMissing || !findings.Exists(told => told.Field == f.Field))
        .Where(f => isHeatKnown || !OfElectricKilns.Contains(f.Code)).ToList());

    /// <summary>Dimensions that make no shape.</summary>
    public void NoShape(string field) => found.Add(Shapeless(field));

    /// <summary>The finding on dimensions that make no shape.</summary>
    public static Finding Shapeless(string field) => new(
        FindingCodes.KilnSizeConflict, field, null, Message.Of("kilns.no-shape"),
        Message.Verbatim(["heightMillimetres, widthMillimetres, depthMillimetres", "heightMillimetres, diameterMillimetres"]));

    /// <summary>A wall of a material that is not in the table.</summary>
    public void UnknownWall(string field, string material, IReadOnlyList<string> walls) => found.Add(new(
        FindingCodes.KilnWallUnknown, field, material, Message.Of("kilns.wall-unknown", ("material", material)), Message.Verbatim(walls),
        NearMatches.Find(material, walls, 1) is [var near] ? Message.Of("kilns.wall-near", ("near", near)) : null));

    /// <summary>A parameter that this heat, or another parameter, rules out.</summary>
    public void NotApplicable(string field, string value, Message why) =>
        found.Add(new(FindingCodes.KilnParameterNotApplicable, field, value, why, []));

    /// <summary>Power that no kiln of the size has.</summary>
    public void AbsurdPower(string field, double kilowatts, double low, double high) => found.Add(new(
        FindingCodes.KilnPowerAbsurd, field, Text(kilowatts), Message.Of("kilns.power-absurd", ("kilowatts", kilowatts)),
        [Message.Of("kilns.power-range", ("low", low), ("high", high))],
        kilowatts > high ? Message.Of("kilns.power-too-high") : Message.Of("kilns.power-too-low")));

    /// <summary>More voltage than elements and wiring were made for.</summary>
    public void Overvoltage(string field, double wired, double installed, double most) => found.Add(new(
        FindingCodes.KilnOvervoltage, field, Text(wired),
        Message.Of(
            "kilns.overvoltage",
            ("installed", installed), ("wired", wired), ("percent", 100 * (Math.Pow(wired / installed, 2) - 1))),
        [Message.Of("kilns.overvoltage-allowed", ("most", Math.Floor(installed * most)))],
        Message.Of("kilns.overvoltage-mistake")));

    /// <summary>A wall of the kiln thicker than its chamber is wide.</summary>
    public void WallTooThick(string field, double millimetres, double side) => found.Add(new(
        FindingCodes.KilnWallTooThick, field, Text(millimetres),
        Message.Of("kilns.wall-thicker-than-chamber", ("wall", millimetres), ("side", Math.Floor(side))),
        [Message.Of("kilns.at-most-millimetres", ("most", Math.Floor(side)))], Message.Of("kilns.wall-thicker-mistake")));

    /// <summary>Ware whose wall is thicker than the chamber is wide.</summary>
    public void WareTooThick(string field, double millimetres, double side) => found.Add(new(
        FindingCodes.LoadDoesNotFit, field, Text(millimetres),
        Message.Of("kilns.ware-thicker-than-chamber", ("wall", millimetres), ("side", Math.Floor(side))),
        [Message.Of("kilns.at-most-millimetres", ("most", Math.Floor(side)))], Message.Of("kilns.ware-thicker-mistake")));

    /// <summary>More ware and furniture than has room.</summary>
    public void TooHeavy(string field, double sent, double total, double litres, double most, double either) => found.Add(new(
        FindingCodes.LoadDoesNotFit, field, Text(sent),
        Message.Of("kilns.load-too-heavy", ("kilograms", total), ("litres", litres)),
        [Message.Of("kilns.at-most-kilograms", ("most", most), ("either", either))], Message.Of("kilns.load-too-heavy-mistake")));

    /// <summary>A number as text.</summary>
    public static string Text(double? value) => value?.ToString(CultureInfo.InvariantCulture) ?? "";
}
