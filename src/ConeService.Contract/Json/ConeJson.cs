using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using ConeService.Contract.Batches;
using ConeService.Contract.Colours;
using ConeService.Contract.Cones;
using ConeService.Contract.Conversions;
using ConeService.Contract.Datasets;
using ConeService.Contract.Equations;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Kilns;
using ConeService.Contract.Loads;
using ConeService.Contract.Materials;
using ConeService.Contract.Plans;
using ConeService.Contract.Practice;
using ConeService.Contract.Problems;
using ConeService.Contract.Routes;
using ConeService.Contract.Schedules;
using ConeService.Contract.Study;

namespace ConeService.Contract.Json;

/// <summary>The JSON of the contract: camelCase, enums in kebab-case, strict numbers, no unknown or repeated members.</summary>
[JsonSerializable(typeof(ConeRange))]
[JsonSerializable(typeof(NumberRange))]
[JsonSerializable(typeof(BatchAnswer<ColourResolution>))]
[JsonSerializable(typeof(BatchAnswer<LoadAnswer>))]
[JsonSerializable(typeof(BatchAnswer<PairingAnswer>))]
[JsonSerializable(typeof(BatchAnswer<ScheduleFit>))]
[JsonSerializable(typeof(CalibrateAnswer))]
[JsonSerializable(typeof(CalibrateRequest))]
[JsonSerializable(typeof(CautionDetail))]
[JsonSerializable(typeof(CautionList))]
[JsonSerializable(typeof(ChartCellDetail))]
[JsonSerializable(typeof(ChartDetail))]
[JsonSerializable(typeof(ChartList))]
[JsonSerializable(typeof(ClayBodyDetail))]
[JsonSerializable(typeof(ClayBodyList))]
[JsonSerializable(typeof(ColorantDetail))]
[JsonSerializable(typeof(ColorantList))]
[JsonSerializable(typeof(ColourAnswer))]
[JsonSerializable(typeof(ColourBatchRequest))]
[JsonSerializable(typeof(ColourRequest))]
[JsonSerializable(typeof(ColourResolution))]
[JsonSerializable(typeof(CompareAnswer))]
[JsonSerializable(typeof(CompareRequest))]
[JsonSerializable(typeof(ConeDescription))]
[JsonSerializable(typeof(ConeFactList))]
[JsonSerializable(typeof(ConeList))]
[JsonSerializable(typeof(ConeReading))]
[JsonSerializable(typeof(ConversionAnswer))]
[JsonSerializable(typeof(ConversionRequest))]
[JsonSerializable(typeof(DatasetChanges))]
[JsonSerializable(typeof(DatasetDescription))]
[JsonSerializable(typeof(DisagreementList))]
[JsonSerializable(typeof(EndPoint))]
[JsonSerializable(typeof(EquationDetail))]
[JsonSerializable(typeof(EquationList))]
[JsonSerializable(typeof(FaultDetail))]
[JsonSerializable(typeof(FaultList))]
[JsonSerializable(typeof(FiringKindList))]
[JsonSerializable(typeof(FiringPlan))]
[JsonSerializable(typeof(FitBatchRequest))]
[JsonSerializable(typeof(FitRequest))]
[JsonSerializable(typeof(ForecastAnswer))]
[JsonSerializable(typeof(ForecastRequest))]
[JsonSerializable(typeof(GlazeDetail))]
[JsonSerializable(typeof(GlazeList))]
[JsonSerializable(typeof(HealthStatus))]
[JsonSerializable(typeof(HeatWorkAnswer))]
[JsonSerializable(typeof(HeatWorkRequest))]
[JsonSerializable(typeof(LandmarkDetail))]
[JsonSerializable(typeof(LandmarkList))]
[JsonSerializable(typeof(LimitDetail))]
[JsonSerializable(typeof(LimitList))]
[JsonSerializable(typeof(LoadAnswer))]
[JsonSerializable(typeof(LoadBatchRequest))]
[JsonSerializable(typeof(LoadRequest))]
[JsonSerializable(typeof(LoadRuleDetail))]
[JsonSerializable(typeof(LoadRuleList))]
[JsonSerializable(typeof(PairingAnswer))]
[JsonSerializable(typeof(PairingBatchRequest))]
[JsonSerializable(typeof(PairingRequest))]
[JsonSerializable(typeof(PlanRequest))]
[JsonSerializable(typeof(Problem))]
[JsonSerializable(typeof(ProcessDetail))]
[JsonSerializable(typeof(ProcessList))]
[JsonSerializable(typeof(QuestionList))]
[JsonSerializable(typeof(ReasonCodeList))]
[JsonSerializable(typeof(RouteList))]
[JsonSerializable(typeof(ScheduleDetail))]
[JsonSerializable(typeof(ScheduleFit))]
[JsonSerializable(typeof(ScheduleList))]
[JsonSerializable(typeof(SearchAnswer))]
[JsonSerializable(typeof(SolveAnswer))]
[JsonSerializable(typeof(SolveRequest))]
[JsonSerializable(typeof(SourceDetail))]
[JsonSerializable(typeof(SourceList))]
[JsonSerializable(typeof(TermDetail))]
[JsonSerializable(typeof(TermList))]
[JsonSerializable(typeof(TableDetail))]
[JsonSerializable(typeof(TableList))]
[JsonSerializable(typeof(StoredRowDetail))]
// Cells of the data package.
[JsonSerializable(typeof(string[]))]
// What writes without these options' converters is never used, and is compiled into every program all the same.
[JsonSourceGenerationOptions(GenerationMode = JsonSourceGenerationMode.Metadata)]
internal sealed partial class ConeJsonContext : JsonSerializerContext;

/// <summary>The options that <see cref="ConeJsonContext"/> is used with.</summary>
public static class ConeJson
{
    /// <summary>The options of the contract.</summary>
    public static JsonSerializerOptions Options { get; } = Create();

    /// <summary>Makes other options agree with the contract.</summary>
    public static void Apply(JsonSerializerOptions options)
    {
        options.PropertyNamingPolicy = JsonNamingPolicy.CamelCase;
        options.PropertyNameCaseInsensitive = false;
        options.NumberHandling = JsonNumberHandling.Strict;
        options.UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow;
        options.AllowDuplicateProperties = false;
        // Requests are shallow; the schema of the deepest answer, which is written with these options too, is not.
        options.MaxDepth = 32;
        // °, Δ and quotation marks stay readable; the media type is JSON, never HTML.
        options.Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping;
        options.Converters.Add(new WordConverters());
        options.Converters.Add(new SentTextConverter());
        options.Converters.Add(new MessageConverter());
        options.Converters.Add(new AddressConverter());
        options.TypeInfoResolverChain.Insert(0, ConeJsonContext.Default.WithAddedModifier(AnswerShapes.Shape));
    }

    private static JsonSerializerOptions Create()
    {
        var options = new JsonSerializerOptions { TypeInfoResolver = null };
        Apply(options);
        options.MakeReadOnly();
        return options;
    }
}
