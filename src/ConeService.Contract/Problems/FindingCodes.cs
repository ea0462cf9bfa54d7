
namespace ConeService.Contract.Problems;

/// <summary>
/// Every code that a finding can have. What each means and what to do about it are the messages
/// <c>problems.(code).title</c>, <c>.meaning</c> and <c>.remedy</c>; its HTTP status is in <see cref="ProblemKinds"/>.
/// </summary>
public static class FindingCodes
{

    /// <summary>Unknown additive.</summary>
    public const string AdditiveUnknown = "additive-unknown";

    /// <summary>Unknown atmosphere.</summary>
    public const string AtmosphereUnknown = "atmosphere-unknown";

    /// <summary>Unknown base glaze.</summary>
    public const string BaseUnknown = "base-unknown";

    /// <summary>Body stalled.</summary>
    public const string BodyStalled = "body-stalled";

    /// <summary>Neither true nor false.</summary>
    public const string BooleanExpected = "boolean-expected";

    /// <summary>Unknown chart.</summary>
    public const string ChartUnknown = "chart-unknown";

    /// <summary>Chart can't follow a firing.</summary>
    public const string ChartWithoutKinetics = "chart-without-kinetics";


    /// <summary>Not a time of the clock.</summary>
    public const string ClockTimeUnreadable = "clock-time-unreadable";

    /// <summary>Unknown colorant.</summary>
    public const string ColorantUnknown = "colorant-unknown";

    /// <summary>Unknown colour word.</summary>
    public const string ColourUnknown = "colour-unknown";

    /// <summary>Cone sent as a number.</summary>
    public const string ConeAsNumber = "cone-as-number";


    /// <summary>Cone not on this chart.</summary>
    public const string ConeNotOnChart = "cone-not-on-chart";

    /// <summary>Cone outside the load check.</summary>
    public const string ConeOutsideLoadCheck = "cone-outside-load-check";

    /// <summary>Cone outside the schedule.</summary>
    public const string ConeOutsideSchedule = "cone-outside-schedule";

    /// <summary>No such cone.</summary>
    public const string ConeUnknown = "cone-unknown";

    /// <summary>Not a cone.</summary>
    public const string ConeUnreadable = "cone-unreadable";

    /// <summary>There is no cone 0.</summary>
    public const string ConeZero = "cone-zero";

    /// <summary>Compressed body not read.</summary>
    public const string ContentEncodingUnsupported = "content-encoding-unsupported";

    /// <summary>Unsupported content type.</summary>
    public const string ContentTypeUnsupported = "content-type-unsupported";

    /// <summary>Controller holds too few segments.</summary>
    public const string ControllerTooSmall = "controller-too-small";

    /// <summary>Cooling stated twice, or not at all.</summary>
    public const string CoolingAmbiguous = "cooling-ambiguous";

    /// <summary>Wrong CSV headers.</summary>
    public const string CsvHeaders = "csv-headers";

    /// <summary>Malformed CSV.</summary>
    public const string CsvMalformed = "csv-malformed";

    /// <summary>Another data package is served.</summary>
    public const string DatasetNotServed = "dataset-not-served";

    /// <summary>A piece of a plan is due before it is ready.</summary>
    public const string DueBeforeReady = "due-before-ready";

    /// <summary>Nothing was asked.</summary>
    public const string EmptyRequest = "empty-request";

    /// <summary>Not told what to find.</summary>
    public const string FindUnknown = "find-unknown";

    /// <summary>Programme or log?</summary>
    public const string FiringAmbiguous = "firing-ambiguous";

    /// <summary>A firing that stands is not among those that its kiln runs.</summary>
    public const string FiringNotOnMenu = "firing-not-on-menu";

    /// <summary>A format that an answer is not made in.</summary>
    public const string FormatNotMade = "format-not-made";

    /// <summary>More than 26 weeks lie between the ends of the horizon of a plan.</summary>
    public const string HorizonTooLong = "horizon-too-long";

    /// <summary>No schedule fits a firing of a kiln, and how long it takes was not sent.</summary>
    public const string HoursUnknown = "hours-unknown";

    /// <summary>Ingredient given twice.</summary>
    public const string IngredientRepeated = "ingredient-repeated";

    /// <summary>The service failed.</summary>
    public const string InternalError = "internal-error";

    /// <summary>Several things are wrong.</summary>
    public const string InvalidRequest = "invalid-request";

    /// <summary>The kiln ends below the cone.</summary>
    public const string KilnBelowCone = "kiln-below-cone";

    /// <summary>Two kilns of a plan have the same id.</summary>
    public const string KilnIdRepeated = "kiln-id-repeated";

    /// <summary>Number no kiln has.</summary>
    public const string KilnNumberOutOfRange = "kiln-number-out-of-range";

    /// <summary>Does not apply to this kiln.</summary>
    public const string KilnParameterNotApplicable = "kiln-parameter-not-applicable";

    /// <summary>More voltage than the elements were made for.</summary>
    public const string KilnOvervoltage = "kiln-overvoltage";

    /// <summary>The kiln's wall is thicker than its chamber is wide.</summary>
    public const string KilnWallTooThick = "kiln-wall-too-thick";

    /// <summary>The load has no room in the kiln.</summary>
    public const string LoadDoesNotFit = "load-does-not-fit";

    /// <summary>Absurd power.</summary>
    public const string KilnPowerAbsurd = "kiln-power-absurd";

    /// <summary>Sizes disagree.</summary>
    public const string KilnSizeConflict = "kiln-size-conflict";


    /// <summary>Unknown kiln.</summary>
    public const string KilnUnknown = "kiln-unknown";

    /// <summary>Unknown wall.</summary>
    public const string KilnWallUnknown = "kiln-wall-unknown";

    /// <summary>Line names a cone and a temperature.</summary>
    public const string LineAmbiguous = "line-ambiguous";

    /// <summary>Line names nothing to convert.</summary>
    public const string LineEmpty = "line-empty";

    /// <summary>Not a list.</summary>
    public const string ListExpected = "list-expected";

    /// <summary>The log has no usable reading for too long near its top.</summary>
    public const string LogBlindNearTop = "log-blind-near-top";

    /// <summary>A clock may have been changed during the log, and nothing tells whether.</summary>
    public const string LogClockChange = "log-clock-change";

    /// <summary>Every date of a log can be read with the day first and with the month first.</summary>
    public const string LogDateAmbiguous = "log-date-ambiguous";

    /// <summary>Empty log.</summary>
    public const string LogEmpty = "log-empty";

    /// <summary>The log has no rows for too long near its top.</summary>
    public const string LogGapNearTop = "log-gap-near-top";

    /// <summary>A logger was restarted, and how long it was off decides the answer.</summary>
    public const string LogRestarted = "log-restarted";

    /// <summary>A log goes up by a step that no kiln makes.</summary>
    public const string LogStepImpossible = "log-step-impossible";

    /// <summary>Temperature no studio has.</summary>
    public const string LogTemperatureOutOfRange = "log-temperature-out-of-range";

    /// <summary>The thermocouple of a log was lost near its top.</summary>
    public const string LogThermocoupleLost = "log-thermocouple-lost";

    /// <summary>Time runs backwards.</summary>
    public const string LogTimeBackwards = "log-time-backwards";

    /// <summary>Time without a unit.</summary>
    public const string LogTimeUnitMissing = "log-time-unit-missing";

    /// <summary>Not a time.</summary>
    public const string LogTimeUnreadable = "log-time-unreadable";

    /// <summary>Log too short.</summary>
    public const string LogTooShort = "log-too-short";

    /// <summary>Not a temperature reading.</summary>
    public const string LogValueUnreadable = "log-value-unreadable";

    /// <summary>Malformed JSON.</summary>
    public const string MalformedJson = "malformed-json";

    /// <summary>Material named twice.</summary>
    public const string MaterialAmbiguous = "material-ambiguous";

    /// <summary>Member missing.</summary>
    public const string MemberMissing = "member-missing";

    /// <summary>Method not allowed.</summary>
    public const string MethodNotAllowed = "method-not-allowed";

    /// <summary>No kiln can be started within the horizon of a plan.</summary>
    public const string NoStartInHorizon = "no-start-in-horizon";

    /// <summary>Not available in that media type.</summary>
    public const string NotAcceptable = "not-acceptable";

    /// <summary>Not found.</summary>
    public const string NotFound = "not-found";

    /// <summary>Decimals or thousands?</summary>
    public const string NumberAmbiguous = "number-ambiguous";

    /// <summary>Not a number.</summary>
    public const string NumberExpected = "number-expected";

    /// <summary>Number out of range.</summary>
    public const string NumberOutOfRange = "number-out-of-range";

    /// <summary>Not an object.</summary>
    public const string ObjectExpected = "object-expected";

    /// <summary>Witness cone not described.</summary>
    public const string ObservationUnreadable = "observation-unreadable";

    /// <summary>Percentage out of range.</summary>
    public const string PercentOutOfRange = "percent-out-of-range";

    /// <summary>Percentages above 100.</summary>
    public const string PercentSum = "percent-sum";

    /// <summary>Not a percentage.</summary>
    public const string PercentUnreadable = "percent-unreadable";

    /// <summary>Piece named twice.</summary>
    public const string PieceIdRepeated = "piece-id-repeated";

    /// <summary>A firing that stands names a piece that is not in the backlog, or more of them than there are.</summary>
    public const string PieceUnknown = "piece-unknown";

    /// <summary>Two firings that stand take the same kiln at the same time.</summary>
    public const string PinsOverlap = "pins-overlap";

    /// <summary>Programme does nothing.</summary>
    public const string ProgrammeDoesNothing = "programme-does-nothing";

    /// <summary>Range upside down.</summary>
    public const string RangeInverted = "range-inverted";

    /// <summary>The chart states no rate.</summary>
    public const string RateNotApplicable = "rate-not-applicable";

    /// <summary>A rate at which nothing moves.</summary>
    public const string RateImperceptible = "rate-imperceptible";

    /// <summary>Not computable at this rate.</summary>
    public const string RateNotComputable = "rate-not-computable";

    /// <summary>Rate out of range.</summary>
    public const string RateOutOfRange = "rate-out-of-range";

    /// <summary>Rate without a unit.</summary>
    public const string RateUnitMissing = "rate-unit-missing";

    /// <summary>Not a heating rate.</summary>
    public const string RateUnreadable = "rate-unreadable";

    /// <summary>Renamed.</summary>
    public const string Renamed = "renamed";

    /// <summary>Named by its old id.</summary>
    public const string RenamedValue = "renamed-value";

    /// <summary>Parameter given twice.</summary>
    public const string RepeatedParameter = "repeated-parameter";

    /// <summary>Request too large.</summary>
    public const string RequestTooLarge = "request-too-large";

    /// <summary>The schedule ends without a cone.</summary>
    public const string ScheduleWithoutCone = "schedule-without-cone";

    /// <summary>Segment without a target.</summary>
    public const string SegmentWithoutTarget = "segment-without-target";


    /// <summary>A start beside what would choose one.</summary>
    public const string StartAmbiguous = "start-ambiguous";

    /// <summary>No start does what is asked.</summary>
    public const string StartImpossible = "start-impossible";

    /// <summary>Not a date and time.</summary>
    public const string StartUnreadable = "start-unreadable";

    /// <summary>Green ware in a hot kiln.</summary>
    public const string StartTooHot = "start-too-hot";

    /// <summary>The clocks leave out the hour in which the start lies.</summary>
    public const string StartInSkippedHour = "start-in-skipped-hour";

    /// <summary>Start without an offset.</summary>
    public const string StartWithoutOffset = "start-without-offset";

    /// <summary>Tariff without a currency.</summary>
    public const string TariffWithoutCurrency = "tariff-without-currency";

    /// <summary>Temperature outside the chart.</summary>
    public const string TemperatureOutsideScale = "temperature-outside-scale";

    /// <summary>Temperature without a unit.</summary>
    public const string TemperatureUnitMissing = "temperature-unit-missing";

    /// <summary>Not a temperature.</summary>
    public const string TemperatureUnreadable = "temperature-unreadable";

    /// <summary>Not a text.</summary>
    public const string TextExpected = "text-expected";

    /// <summary>A name is too long.</summary>
    public const string TextTooLong = "text-too-long";

    /// <summary>A name holds what does not print.</summary>
    public const string TextUnprintable = "text-unprintable";

    /// <summary>Unknown thermocouple.</summary>
    public const string ThermocoupleUnknown = "thermocouple-unknown";

    /// <summary>Thickness out of range.</summary>
    public const string ThicknessOutOfRange = "thickness-out-of-range";

    /// <summary>A time zone is none of the IANA database.</summary>
    public const string TimeZoneUnknown = "time-zone-unknown";

    /// <summary>Too busy.</summary>
    public const string TooBusy = "too-busy";

    /// <summary>Too many coats.</summary>
    public const string TooManyCoats = "too-many-coats";

    /// <summary>Too many columns.</summary>
    public const string TooManyColumns = "too-many-columns";

    /// <summary>Too many ingredients.</summary>
    public const string TooManyIngredients = "too-many-ingredients";

    /// <summary>Too many questions.</summary>
    public const string TooManyItems = "too-many-items";

    /// <summary>Too many lines.</summary>
    public const string TooManyLines = "too-many-lines";

    /// <summary>Too many pieces.</summary>
    public const string TooManyPieces = "too-many-pieces";

    /// <summary>Too many segments.</summary>
    public const string TooManySegments = "too-many-segments";

    /// <summary>Too much at once.</summary>
    public const string TooMuchAtOnce = "too-much-at-once";

    /// <summary>Took too long.</summary>
    public const string TookTooLong = "took-too-long";

    /// <summary>Unknown topic.</summary>
    public const string TopicUnknown = "topic-unknown";

    /// <summary>Units contradict each other.</summary>
    public const string UnitsContradict = "units-contradict";

    /// <summary>Unit of temperature missing.</summary>
    public const string UnitsMissing = "units-missing";

    /// <summary>°C that look like °F.</summary>
    public const string UnitsSuspect = "units-suspect";

    /// <summary>Unknown units.</summary>
    public const string UnitsUnknown = "units-unknown";

    /// <summary>Unknown JSON member.</summary>
    public const string UnknownMember = "unknown-member";

    /// <summary>Unknown query parameter.</summary>
    public const string UnknownParameter = "unknown-parameter";

    /// <summary>Upload broke off.</summary>
    public const string UploadTruncated = "upload-truncated";

    /// <summary>Ware too wet for the schedule.</summary>
    public const string WareNotDry = "ware-not-dry";

    /// <summary>Unknown word.</summary>
    public const string WordUnknown = "word-unknown";
}
