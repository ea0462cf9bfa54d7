using System.Globalization;
using ConeService.Data;
using ConeService.Firing.Kilns;
using ConeService.Firing.Tests.Support;

namespace ConeService.Firing.Tests.Kilns;

/// <summary>Kilns and plans that several tests fire.</summary>
internal static class KilnCases
{
    public static KilnModel Model { get; } = new(Reference.Dataset);

    public static KilnPrediction Fire(string id, double step = KilnModel.StepSeconds)
    {
        var row = Row(id);
        var wall = new StatedWall(row["wall_material"], Number(row["wall_millimetres"]));
        var kiln = new StatedKiln(KilnHeat.Electric, Number(row["volume_litres"]), Wall: wall, Kilowatts: Number(row["kilowatts"]));
        var ware = row["ware"] == "green" ? WareStage.Green : WareStage.Bisqued;
        var load = new KilnLoad(Number(row["kilograms_ware"]), Number(row["kilograms_furniture"]), Ware: ware);
        return Model.Predict(Model.Resolve(kiln, load), Plan(row["plan"]), step);
    }

    public static Dictionary<string, string> Row(string id) => CsvFile.Read("Vectors/kiln-firings.csv").Single(r => r["id"] == id);

    /// <summary>rate:target:hours;… with - for no rate.</summary>
    public static KilnProgramme Plan(string text) =>
        new([.. text.Split(';').Select(s => s.Split(':'))
            .Select(s => new KilnSegment(s[0] == "-" ? null : Number(s[0]), Number(s[1]), Number(s[2])))]);

    /// <summary>A brick kiln of 198 L with an ordinary glazed load.</summary>
    public static KilnSetup Glazed(double kilowatts) =>
        Model.Resolve(new(KilnHeat.Electric, 198, Kilowatts: kilowatts), new(40, 30, Ware: WareStage.Bisqued));

    public static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
