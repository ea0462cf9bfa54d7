using ConeService.Contract.Answers;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Problems;
using ConeService.Contract.Schedules;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Cones;
using ConeService.Firing.Kilns;

namespace ConeService.Firing.HeatWork.Forecasting;

/// <summary>Reads the kiln and the load of a question on a firing under way.</summary>
/// <param name="scale">The scale of cones.</param>
/// <param name="model">The kiln model.</param>
internal sealed class ForecastKilnReader(ConeScale scale, KilnModel model)
{
    /// <summary>Reads them; what is wrong is added to the findings.</summary>
    public (string? Id, KilnHeat? Heat, KilnSetup? Setup) Read(
        ForecastRequest request, List<Assumption> assumed, List<Finding> findings)
    {
        var load = ReadLoad(request.Load ?? new(), findings);
        // A caller keeps one record of a load for every route; this one reckons with masses and judges nothing.
        if (request.Load?.Pieces is { Count: > 0 })
            assumed.Add(new("load/pieces", "not judged", Message.Of("forecast.pieces-not-judged")));
        if (request.Kiln is not { } sent)
        {
            assumed.Add(new("kiln", "not stated", Message.Of("forecast.assumed-no-kiln")));
            return default;
        }

        var reader = new KilnReader(sent, scale, "/kiln", findings);
        var (id, heat) = (reader.Id(), reader.Heat());
        if (heat is KilnHeat.Wood) return (id, heat, null);
        try
        {
            var setup = model.Resolve(reader.ForModel(heat ?? KilnHeat.Electric, request.Units == "F"), load);
            if (heat is null) return default;
            assumed.AddRange(setup.Assumed);
            return (id, heat, setup);
        }
        catch (RefusedException refused)
        {
            KilnFindings.Take(refused, findings, heat is not null);
            return (id, heat, null);
        }
    }

    private static KilnLoad ReadLoad(FitLoad load, List<Finding> findings)
    {
        var (dryness, glaze) = (default(Dryness), GlazeCoat.None);
        if (load.Dryness is { } damp && !EnumWords.TryRead(damp, out dryness))
            findings.Add(Unknown<Dryness>("/load/dryness", damp, Message.Of("schedules.dryness-unknown", ("sent", damp))));
        if (load.Glaze is { } coat && !EnumWords.TryRead(coat, out glaze))
            findings.Add(Unknown<GlazeCoat>("/load/glaze", coat, Message.Of("schedules.glaze-unknown", ("sent", coat))));
        // Raw clay has a dryness; a coat on ware of which none is stated is taken for one on bisque.
        WareStage? ware = load.Dryness is not null ? WareStage.Green : glaze != GlazeCoat.None ? WareStage.Bisqued : null;
        return new(
            load.KilogramsWare, load.KilogramsFurniture, load.ThickestMillimetres, ware, load.Dryness is null ? null : dryness);
    }

    private static Finding Unknown<T>(string field, string sent, Message message)
        where T : struct, Enum => new(FindingCodes.WordUnknown, field, sent, message, Message.Verbatim(EnumWords.All<T>()));
}
