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

namespace ConeService.Client.Reading;

/// <summary>A reader for each vocabulary of the contract. They are named one by one, since a type made while running is none that a
/// program compiled ahead of time has; a test holds the list against the contract.</summary>
internal static class WordReaders
{
    /// <summary>The readers.</summary>
    public static IReadOnlyList<JsonConverter> All { get; } =
    [
        new WordReader<Atmosphere>(),
        new WordReader<AtmosphereUse>(),
        new WordReader<AttendanceMoment>(),
        new WordReader<AttendanceRule>(),
        new WordReader<BaseMatch>(),
        new WordReader<Basis>(),
        new WordReader<CoatFood>(),
        new WordReader<CoatKind>(),
        new WordReader<ColorantKind>(),
        new WordReader<ColourBasis>(),
        new WordReader<ColourRuleEffect>(),
        new WordReader<ColourWordKind>(),
        new WordReader<ConeOddity>(),
        new WordReader<Confidence>(),
        new WordReader<CostBasis>(),
        new WordReader<Exposed>(),
        new WordReader<ExposureAveraging>(),
        new WordReader<ExposureLimitKind>(),
        new WordReader<FahrenheitBasis>(),
        new WordReader<FiringKind>(),
        new WordReader<FiringReason>(),
        new WordReader<FiringStage>(),
        new WordReader<FirstStep>(),
        new WordReader<FitChangeCode>(),
        new WordReader<Following>(),
        new WordReader<FoodLimitStanding>(),
        new WordReader<ForecastChange>(),
        new WordReader<ForecastVerdict>(),
        new WordReader<Fume>(),
        new WordReader<GlazeCoat>(),
        new WordReader<HazardKind>(),
        new WordReader<HazardLevel>(),
        new WordReader<HoldsWater>(),
        new WordReader<IngredientOrigin>(),
        new WordReader<IngredientRole>(),
        new WordReader<KilnHeat>(),
        new WordReader<KilnReduction>(),
        new WordReader<LandmarkPhase>(),
        new WordReader<LimitKind>(),
        new WordReader<LimitStanding>(),
        new WordReader<LoadDetail>(),
        new WordReader<MessageAudience>(),
        new WordReader<OverfireStep>(),
        new WordReader<PackageStanding>(),
        new WordReader<PercentMatch>(),
        new WordReader<PieceState>(),
        new WordReader<Porosity>(),
        new WordReader<ProcedurePhase>(),
        new WordReader<ProcessFoodContact>(),
        new WordReader<ProcessKiln>(),
        new WordReader<PublishedField>(),
        new WordReader<ReasonCode>(),
        new WordReader<ReasonSeverity>(),
        new WordReader<RuleSeverity>(),
        new WordReader<RuleStanding>(),
        new WordReader<RunRisk>(),
        new WordReader<SeenOn>(),
        new WordReader<SentForm>(),
        new WordReader<SentKind>(),
        new WordReader<Severity>(),
        new WordReader<SourceVia>(),
        new WordReader<SuggestionBasis>(),
        new WordReader<TemperatureLimitKind>(),
        new WordReader<ThermalShock>(),
        new WordReader<VentSetting>(),
        new WordReader<Verdict>(),
        new WordReader<WaitReason>(),
        new WordReader<WareAnswer>(),
        new WordReader<WareFood>(),
        new WordReader<WareForm>(),
        new WordReader<WaterBand>(),
        new WordReader<Weekday>(),
        new WordReader<WhatIfChange>(),
        new WordReader<WorkStage>(),
        new WordReader<YesNo>(),
    ];
}
