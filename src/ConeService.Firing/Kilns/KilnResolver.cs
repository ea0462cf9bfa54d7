using ConeService.Contract.Answers;
using ConeService.Contract.Kilns;
using ConeService.Contract.Requests;
using ConeService.Contract.Schedules;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing.Kilns;

/// <summary>Decides every parameter of one kiln and load: as stated, or from the tables, and says which.</summary>
internal sealed class KilnResolver(
    Dataset dataset, KilnDefaults defaults, StatedKiln kiln, KilnLoad load, string kilnField, string loadField)
{
    private const double Disagreement = 0.2;
    private const double LeastPerSquareMetre = 0.5;
    private const double MostElectric = 60;
    private const double MostGas = 250;
    private const double MostKilogramsPerLitre = 2.5;

    // Bricks set close, and the same with their furniture; ordinary loads have a third of it.
    private const double DensestKilogramsPerLitre = 1.5;
    private const double DensestOfEither = 1.25;

    // Usual walls change over one doubling of the volume around the size at which a row begins.
    private const double Doubling = 2;
    // Below, the model has no walls that it was tried with.
    private static readonly Bounds Inside = new(100, Bounds.Of<Interior>(nameof(Interior.HeightMillimetres)).High);

    private readonly KilnFindings findings = new();
    private readonly List<Assumption> assumed = [];
    // Every model stands on these, whatever is stated: materials of the load and the constants.
    private readonly List<string> sources =
    [
        .. dataset.KilnMaterials.Single(m => m.Id == KilnModel.ClayMaterial).Sources, .. dataset.KilnDefaults.SelectMany(d => d.Sources),
    ];

    public KilnSetup Resolve()
    {
        KilnChecks.Run(findings, kiln, load, kilnField, loadField);
        var geometry = Geometry();
        if (findings.All.Count > 0)
        {
            // Without a size that can be read only what needs none is judged.
            if (kiln.Wall?.Material is { } stated) _ = Wall(stated);
            var most = Bounds.Of<FitLoad>(nameof(FitLoad.KilogramsWare));
            findings.InRange($"{loadField}/kilogramsWare", load.KilogramsWare, most, "kg");
            findings.InRange($"{loadField}/kilogramsFurniture", load.KilogramsFurniture, most, "kg");
            findings.Refuse();
        }

        var litres = geometry.CubicMetres * 1000;
        var size = dataset.KilnSizes.Last(s => s.Heat == HeatWord && (double)s.FromLitres <= litres);
        var side = SideMillimetres(litres);
        if (kiln.Wall?.ThicknessMillimetres is { } wall && wall > side)
            findings.WallTooThick($"{kilnField}/wall/thicknessMillimetres", wall, side);
        if (load.ThickestMillimetres is { } thickest && thickest > side)
            findings.WareTooThick($"{loadField}/thickestMillimetres", thickest, side);
        var material = Material(size);
        var rated = Rated(size, geometry);
        var (ageing, voltage) = (Ageing(), VoltageShare());
        var ware = Mass("kilogramsWare", load.KilogramsWare, "ware-density", litres);
        var furniture = Mass("kilogramsFurniture", load.KilogramsFurniture, "furniture-density", litres);
        var heaviest = Math.Max(ware, furniture);
        var tooHeavy = ware + furniture > DensestKilogramsPerLitre * litres || heaviest > DensestOfEither * litres;
        if (tooHeavy && heaviest <= MostKilogramsPerLitre * litres
            && (load.KilogramsWare ?? load.KilogramsFurniture) is { } heavy)
        {
            findings.TooHeavy(
                $"{loadField}/{(load.KilogramsWare is null ? "kilogramsFurniture" : "kilogramsWare")}", heavy, ware + furniture, litres,
                Math.Floor(DensestKilogramsPerLitre * litres), Math.Floor(DensestOfEither * litres));
        }

        var stage = load.Ware ?? Assume("load.ware", WareStage.Green, "green", Message.Of("kilns.assumed-green-ware"));
        var setup = new KilnSetup
        {
            Heat = kiln.Heat,
            VolumeLitres = litres,
            InsideSquareMetres = geometry.SquareMetres,
            WallMaterial = material.Id,
            WallMillimetres = WallMillimetres(size, litres),
            RatedKilowatts = rated,
            AvailableKilowatts = rated * voltage / ageing,
            VoltageShare = voltage,
            ElementAgeing = ageing,
            MaxCelsius = kiln.MaxCelsius,
            LeakFactor = kiln.LeakFactor ?? Assume("kiln.leakFactor", 1.0, "1", Message.Of("kilns.assumed-closed")),
            FuelFactor = kiln.FuelFactor,
            KilogramsWare = ware,
            KilogramsFurniture = furniture,
            KilogramsWater = ware * WaterShare(stage),
            Ware = stage,
            Assumed = assumed,
            Sources = [.. sources.Distinct().Order(StringComparer.Ordinal)],
        };
        findings.Refuse();
        return setup;
    }

    private string HeatWord => kiln.Heat != KilnHeat.Electric ? "gas" : "electric";

    private KilnGeometry Geometry()
    {
        if (kiln.Interior is not { } inside)
        {
            if (kiln.VolumeLitres is not { } litres)
            {
                findings.NoSize($"{kilnField}/volumeLitres");
                return default;
            }

            var area = Text(defaults["inside-shape"]) + "·volume^(2/3)";
            assumed.Add(new("kiln.interior", area, Message.Of("kilns.assumed-inside-area")));
            return KilnGeometry.OfVolume(litres, defaults["inside-shape"]);
        }

        var field = $"{kilnField}/interior";
        var sound = findings.InRange($"{field}/heightMillimetres", inside.HeightMillimetres, Inside, "mm")
            & findings.InRange($"{field}/widthMillimetres", inside.WidthMillimetres, Inside, "mm")
            & findings.InRange($"{field}/depthMillimetres", inside.DepthMillimetres, Inside, "mm")
            & findings.InRange($"{field}/diameterMillimetres", inside.DiameterMillimetres, Inside, "mm");
        if (!sound) return default;
        KilnGeometry? shape = inside switch
        {
            { DiameterMillimetres: { } d, WidthMillimetres: null, DepthMillimetres: null } =>
                KilnGeometry.OfRound(d, inside.HeightMillimetres),
            { DiameterMillimetres: null, WidthMillimetres: { } w, DepthMillimetres: { } d } =>
                KilnGeometry.OfBox(w, d, inside.HeightMillimetres),
            _ => null,
        };
        if (shape is not { } found)
        {
            findings.NoShape(field);
            return default;
        }

        var reckoned = found.CubicMetres * 1000;
        if (kiln.VolumeLitres is { } stated && Math.Abs(stated - reckoned) > Disagreement * reckoned)
            findings.SizeConflict($"{kilnField}/volumeLitres", stated, reckoned);
        findings.InRange(field, Math.Round(reckoned, 1), Bounds.Of<Kiln>(nameof(Kiln.VolumeLitres)), "L");
        return found;
    }

    private KilnMaterialRow Material(KilnSizeRow size)
    {
        var wanted = kiln.Wall?.Material ?? Assume("kiln.wall.material", size.WallMaterial, size.WallMaterial, SizeReason(size));
        var found = Wall(wanted);
        sources.AddRange(found.Sources);
        return found;
    }

    // An unknown one stands for any until all that is wrong is told.
    private KilnMaterialRow Wall(string wanted)
    {
        var walls = dataset.KilnMaterials.Where(m => m.Use == "wall").ToList();
        if (walls.Find(m => m.Id == wanted) is { } found) return found;
        if (RenamedId.Of(dataset, "kiln-materials", wanted, $"{kilnField}/wall/material") is { } renamed) findings.Add(renamed);
        else findings.UnknownWall($"{kilnField}/wall/material", wanted, [.. walls.Select(m => m.Id)]);
        return walls[0];
    }

    private double WallMillimetres(KilnSizeRow size, double litres)
    {
        if (kiln.Wall?.ThicknessMillimetres is { } stated) return stated;
        var usual = Math.Round(Smooth(size, litres, s => s.WallMillimetres));
        return Assume("kiln.wall.thicknessMillimetres", usual, Text(usual), SizeReason(size));
    }

    // A litre more makes no other kiln: between rows with one wall the figure goes over by the logarithm of the volume.
    private double Smooth(KilnSizeRow size, double litres, Func<KilnSizeRow, decimal> figure)
    {
        var rows = dataset.KilnSizes.Where(s => s.Heat == HeatWord).ToList();
        var at = rows.IndexOf(size);
        var value = (double)figure(size);
        foreach (var (lower, upper) in rows.Zip(rows.Skip(1)).Where(p => p.First == rows[at] || p.Second == rows[at]))
        {
            if (lower.WallMaterial != upper.WallMaterial) continue;
            var share = 0.5 + (Math.Log(litres / (double)upper.FromLitres) / Math.Log(Doubling));
            if (share is > 0 and < 1) value = (double)figure(lower) + (share * (double)(figure(upper) - figure(lower)));
        }

        return value;
    }

    private double SideMillimetres(double litres) => kiln.Interior is { } inside
        ? new[] { inside.HeightMillimetres, inside.WidthMillimetres, inside.DepthMillimetres, inside.DiameterMillimetres }.Min()!.Value
        : 100 * Math.Cbrt(litres);

    private double Rated(KilnSizeRow size, KilnGeometry geometry)
    {
        if (kiln.Kilowatts is not { } stated)
        {
            var usual = Math.Round(Smooth(size, 1000 * geometry.CubicMetres, s => s.KilowattsPerSquareMetre) * geometry.SquareMetres, 1);
            return Assume("kiln.kilowatts", usual, Text(usual), SizeReason(size));
        }

        var most = kiln.Heat != KilnHeat.Electric ? MostGas : MostElectric;
        var (low, high) = (LeastPerSquareMetre * geometry.SquareMetres, most * geometry.SquareMetres);
        if (stated < low || stated > high) findings.AbsurdPower($"{kilnField}/kilowatts", stated, low, high);
        return stated;
    }

    private double VoltageShare()
    {
        if (kiln.VoltsInstalled is null != kiln.VoltsAsWired is null)
        {
            var missing = kiln.VoltsInstalled is null ? "kiln.voltsInstalled" : "kiln.voltsAsWired";
            assumed.Add(new(missing, Text(kiln.VoltsInstalled ?? kiln.VoltsAsWired), Message.Of("kilns.assumed-voltage")));
        }

        return kiln is { VoltsInstalled: { } installed, VoltsAsWired: { } wired } ? Math.Pow(wired / installed, 2) : 1;
    }

    private double Ageing()
    {
        if (kiln.Heat != KilnHeat.Electric) return 1;
        var age = kiln.ElementAge
            ?? kiln.ElementFirings / defaults["element-firings"]
            ?? Assume("kiln.elementAge", 0.0, "0", Message.Of("kilns.assumed-new-elements"));
        if (age <= KilnChecks.OldestElements) return 1 + (defaults["element-rise"] * age);
        assumed.Add(new("kiln.elementAge", Text(KilnChecks.OldestElements), Message.Of("kilns.assumed-oldest-elements")));
        return 1 + (defaults["element-rise"] * KilnChecks.OldestElements);
    }

    private double Mass(string member, double? stated, string perLitre, double litres)
    {
        if (stated is null)
        {
            var usual = Math.Round(defaults[perLitre] * litres, 1);
            return Assume($"load.{member}", usual, Text(usual), Message.Of("kilns.assumed-load"));
        }

        findings.InRange($"{loadField}/{member}", stated, new Bounds(0, Math.Round(MostKilogramsPerLitre * litres)), "kg");
        return stated.Value;
    }

    private double WaterShare(WareStage stage)
    {
        if (stage == WareStage.Bisqued)
        {
            if (load.Dryness is { } unfit)
                findings.NotApplicable($"{loadField}/dryness", EnumWords.Word(unfit), Message.Of("kilns.dryness-of-bisque"));
            return defaults["bisqued-water"];
        }

        var dryness = load.Dryness
            ?? Assume("load.dryness", Dryness.BoneDry, EnumWords.Word(Dryness.BoneDry), Message.Of("kilns.assumed-bone-dry"));
        return defaults[EnumWords.Word(dryness) + "-water"];
    }

    private T Assume<T>(string parameter, T value, string text, Message reason)
    {
        assumed.Add(new(parameter, text, reason));
        return value;
    }

    private Message SizeReason(KilnSizeRow size)
    {
        sources.AddRange(size.Sources);
        return Message.Of("kilns.assumed-by-size", ("heat", HeatWord), ("litres", size.FromLitres));
    }

    private static string Text(double? value) => KilnFindings.Text(value);
}
