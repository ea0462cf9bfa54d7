using System.Text.Json;
using System.Text.Json.Serialization;
using ConeService.Contract.Answers;
using ConeService.Contract.Colours;
using ConeService.Contract.Cones;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Kilns;
using ConeService.Contract.Loads;
using ConeService.Contract.Materials;
using ConeService.Contract.Plans;
using ConeService.Contract.Practice;
using ConeService.Contract.Requests;
using ConeService.Contract.Schedules;
using ConeService.Data;

namespace ConeService.Contract.Json;

/// <summary>
/// Writes each vocabulary of the contract in kebab-case. They are named one by one, since a type made while running is none that a
/// program compiled ahead of time has; a test holds the list against the contract. What makes a converter runs only for the
/// vocabularies that an answer holds.
/// </summary>
internal sealed class WordConverters : JsonConverterFactory
{
    private static readonly Dictionary<Type, Func<JsonConverterFactory>> Known = new()
    {
        [typeof(Atmosphere)] = Of<Atmosphere>,
        [typeof(AtmosphereUse)] = Of<AtmosphereUse>,
        [typeof(AttendanceMoment)] = Of<AttendanceMoment>,
        [typeof(AttendanceRule)] = Of<AttendanceRule>,
        [typeof(BaseMatch)] = Of<BaseMatch>,
        [typeof(Basis)] = Of<Basis>,
        [typeof(CoatFood)] = Of<CoatFood>,
        [typeof(CoatKind)] = Of<CoatKind>,
        [typeof(ColorantKind)] = Of<ColorantKind>,
        [typeof(ColourBasis)] = Of<ColourBasis>,
        [typeof(ColourRuleEffect)] = Of<ColourRuleEffect>,
        [typeof(ColourWordKind)] = Of<ColourWordKind>,
        [typeof(ConeOddity)] = Of<ConeOddity>,
        [typeof(Confidence)] = Of<Confidence>,
        [typeof(CostBasis)] = Of<CostBasis>,
        [typeof(Exposed)] = Of<Exposed>,
        [typeof(ExposureAveraging)] = Of<ExposureAveraging>,
        [typeof(ExposureLimitKind)] = Of<ExposureLimitKind>,
        [typeof(FahrenheitBasis)] = Of<FahrenheitBasis>,
        [typeof(FiringKind)] = Of<FiringKind>,
        [typeof(FiringReason)] = Of<FiringReason>,
        [typeof(FiringStage)] = Of<FiringStage>,
        [typeof(FirstStep)] = Of<FirstStep>,
        [typeof(FitChangeCode)] = Of<FitChangeCode>,
        [typeof(Following)] = Of<Following>,
        [typeof(FoodLimitStanding)] = Of<FoodLimitStanding>,
        [typeof(ForecastChange)] = Of<ForecastChange>,
        [typeof(ForecastVerdict)] = Of<ForecastVerdict>,
        [typeof(Fume)] = Of<Fume>,
        [typeof(GlazeCoat)] = Of<GlazeCoat>,
        [typeof(HazardKind)] = Of<HazardKind>,
        [typeof(HazardLevel)] = Of<HazardLevel>,
        [typeof(HoldsWater)] = Of<HoldsWater>,
        [typeof(IngredientOrigin)] = Of<IngredientOrigin>,
        [typeof(IngredientRole)] = Of<IngredientRole>,
        [typeof(KilnHeat)] = Of<KilnHeat>,
        [typeof(KilnReduction)] = Of<KilnReduction>,
        [typeof(LandmarkPhase)] = Of<LandmarkPhase>,
        [typeof(LimitKind)] = Of<LimitKind>,
        [typeof(LimitStanding)] = Of<LimitStanding>,
        [typeof(LoadDetail)] = Of<LoadDetail>,
        [typeof(MessageAudience)] = Of<MessageAudience>,
        [typeof(OverfireStep)] = Of<OverfireStep>,
        [typeof(PackageStanding)] = Of<PackageStanding>,
        [typeof(PercentMatch)] = Of<PercentMatch>,
        [typeof(PieceState)] = Of<PieceState>,
        [typeof(Porosity)] = Of<Porosity>,
        [typeof(ProcedurePhase)] = Of<ProcedurePhase>,
        [typeof(ProcessFoodContact)] = Of<ProcessFoodContact>,
        [typeof(ProcessKiln)] = Of<ProcessKiln>,
        [typeof(PublishedField)] = Of<PublishedField>,
        [typeof(ReasonCode)] = Of<ReasonCode>,
        [typeof(ReasonSeverity)] = Of<ReasonSeverity>,
        [typeof(RuleSeverity)] = Of<RuleSeverity>,
        [typeof(RuleStanding)] = Of<RuleStanding>,
        [typeof(RunRisk)] = Of<RunRisk>,
        [typeof(SeenOn)] = Of<SeenOn>,
        [typeof(SentForm)] = Of<SentForm>,
        [typeof(SentKind)] = Of<SentKind>,
        [typeof(Severity)] = Of<Severity>,
        [typeof(SourceVia)] = Of<SourceVia>,
        [typeof(SuggestionBasis)] = Of<SuggestionBasis>,
        [typeof(TemperatureLimitKind)] = Of<TemperatureLimitKind>,
        [typeof(ThermalShock)] = Of<ThermalShock>,
        [typeof(VentSetting)] = Of<VentSetting>,
        [typeof(Verdict)] = Of<Verdict>,
        [typeof(WaitReason)] = Of<WaitReason>,
        [typeof(WareAnswer)] = Of<WareAnswer>,
        [typeof(WareFood)] = Of<WareFood>,
        [typeof(WareForm)] = Of<WareForm>,
        [typeof(WaterBand)] = Of<WaterBand>,
        [typeof(Weekday)] = Of<Weekday>,
        [typeof(WhatIfChange)] = Of<WhatIfChange>,
        [typeof(WorkStage)] = Of<WorkStage>,
        [typeof(YesNo)] = Of<YesNo>,
    };

    /// <summary>The vocabularies.</summary>
    public static IReadOnlyCollection<Type> Vocabularies => Known.Keys;

    /// <inheritdoc />
    public override bool CanConvert(Type typeToConvert) => typeToConvert.IsEnum;

    /// <inheritdoc />
    /// <exception cref="NotSupportedException">The vocabulary is not named here.</exception>
    public override JsonConverter? CreateConverter(Type typeToConvert, JsonSerializerOptions options) =>
        Known.TryGetValue(typeToConvert, out var make)
            ? make().CreateConverter(typeToConvert, options)
            : throw new NotSupportedException($"{typeToConvert.Name} is no vocabulary of {nameof(WordConverters)}.");

    private static JsonStringEnumConverter<T> Of<T>()
        where T : struct, Enum => new(JsonNamingPolicy.KebabCaseLower, allowIntegerValues: false);
}
