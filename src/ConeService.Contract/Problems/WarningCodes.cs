namespace ConeService.Contract.Problems;

/// <summary>
/// Every code that a warning on a firing, its log or an upload can have. A warning is no problem: it comes with the answer.
/// </summary>
public static class WarningCodes
{
    /// <summary>A cone leans whose bend is by its chart quicker than any cone maker has seen.</summary>
    public const string BendUncertain = "bend-uncertain";

    /// <summary>A cone has no kinetics on the chart; its curve is that of the self-supporting cone, moved.</summary>
    public const string BorrowedCurves = "borrowed-curves";

    /// <summary>A clock was put on or back by an hour during the log.</summary>
    public const string ClockChanged = "clock-changed";

    /// <summary>The clock of the log went from the end of a day to its beginning.</summary>
    public const string ClockPassedMidnight = "clock-passed-midnight";

    /// <summary>The steps of the log are wide near its top.</summary>
    public const string CoarseSampling = "coarse-sampling";

    /// <summary>Columns of an upload were not read.</summary>
    public const string ColumnsIgnored = "columns-ignored";

    /// <summary>The cones between which the firing ended hardly differ at slow rates.</summary>
    public const string ConesNearlyTied = "cones-nearly-tied";

    /// <summary>A cone is down although a cooler one is not.</summary>
    public const string ConesOutOfOrder = "cones-out-of-order";

    /// <summary>Only one order of day and month lets the days of the log follow each other.</summary>
    public const string DateOrderDecided = "date-order-decided";

    /// <summary>Samples of the log share a time.</summary>
    public const string DuplicateTimes = "duplicate-times";

    /// <summary>The firing is shorter or longer than firings are.</summary>
    public const string DurationSuspect = "duration-suspect";

    /// <summary>The thermocouple was open or shorted for several readings, which were cut out.</summary>
    public const string ExcursionsCut = "excursions-cut";

    /// <summary>A segment runs as fast as possible, and no limit was stated.</summary>
    public const string FullSpeedAssumed = "full-speed-assumed";

    /// <summary>The log has gaps, which were bridged by straight lines.</summary>
    public const string Gaps = "gaps";

    /// <summary>The log falls by a step that no closed kiln makes.</summary>
    public const string ImpossibleStep = "impossible-step";

    /// <summary>Lines of the log that are no samples were passed over.</summary>
    public const string LinesSkipped = "lines-skipped";

    /// <summary>What is left of a programme goes above what the maker of the kiln allows.</summary>
    public const string KilnBeyondLimit = "kiln-beyond-limit";

    /// <summary>The kiln can't finish what is left of a programme.</summary>
    public const string KilnStalls = "kiln-stalls";

    /// <summary>The log of a firing under way lacks its beginning.</summary>
    public const string LogBeginsHot = "log-begins-hot";

    /// <summary>The log was turned round.</summary>
    public const string LogNewestFirst = "log-newest-first";

    /// <summary>The logger was restarted; its runs were joined.</summary>
    public const string LogRestarted = "log-restarted";

    /// <summary>No cone of the chart is down.</summary>
    public const string NothingDown = "nothing-down";

    /// <summary>A cone moves more or less with the rate than its neighbours.</summary>
    public const string OddCone = "odd-cone";

    /// <summary>The rate before the peak is beyond what any curve supports.</summary>
    public const string RateBeyondLimits = "rate-beyond-limits";

    /// <summary>The rate before the peak is slower or faster than the chart prints.</summary>
    public const string RateExtrapolated = "rate-extrapolated";

    /// <summary>No rate could be read before the peak.</summary>
    public const string RateUnknown = "rate-unknown";

    /// <summary>Rows of the log have a time and no reading.</summary>
    public const string ReadingsMissing = "readings-missing";

    /// <summary>Reduction moves the iron-bearing cones, which is not modelled.</summary>
    public const string ReductionNotModelled = "reduction-not-modelled";

    /// <summary>Samples of the log came late; it was sorted.</summary>
    public const string SamplesOutOfOrder = "samples-out-of-order";

    /// <summary>Every cone of the chart is down.</summary>
    public const string ScaleExceeded = "scale-exceeded";

    /// <summary>Small cones bend later and depend on how they are set.</summary>
    public const string SmallCones = "small-cones";

    /// <summary>Readings jumped away and back; they were rejected.</summary>
    public const string SpikesRejected = "spikes-rejected";

    /// <summary>The peak is beyond the range of the tolerance of the thermocouple.</summary>
    public const string ThermocoupleBeyondRange = "thermocouple-beyond-range";

    /// <summary>The thermocouple was lost while the kiln cooled; the log ends there.</summary>
    public const string ThermocoupleLost = "thermocouple-lost";

    /// <summary>The peak is hotter than wires of this type survive.</summary>
    public const string ThermocoupleOverheated = "thermocouple-overheated";

    /// <summary>A mark in numbers was read as that of thousands.</summary>
    public const string ThousandsRead = "thousands-read";

    /// <summary>A time zone was stated for times that have none.</summary>
    public const string TimeZoneUnused = "time-zone-unused";

    /// <summary>The peak is one of the other unit.</summary>
    public const string UnitsLookWrong = "units-look-wrong";

    /// <summary>No cone of an upload has a leading zero, although some could have lost theirs.</summary>
    public const string ZerosLost = "zeros-lost";

    /// <summary>The log has several thermocouples; the answer is that of the coolest.</summary>
    public const string ZonesDiffer = "zones-differ";
}
