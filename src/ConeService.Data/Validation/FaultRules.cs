namespace ConeService.Data;

/// <summary>Stable ids of the rules a data package can break. An id is never reused for another rule.</summary>
public static class FaultRules
{
    /// <summary>A file, or the directory itself, cannot be read.</summary>
    public const string UnreadableFile = "unreadable-file";

    /// <summary>datapackage.json, CHANGELOG.md of the base package, or the file of a table is not there.</summary>
    public const string MissingFile = "missing-file";

    /// <summary>A CSV file is not described in datapackage.json.</summary>
    public const string UnlistedFile = "unlisted-file";

    /// <summary>datapackage.json is malformed, contradicts itself or asks for what is not supported.</summary>
    public const string Descriptor = "descriptor";

    /// <summary>A file is not the one that datapackage.json seals, or a package that must be sealed is not.</summary>
    public const string Seal = "seal";

    /// <summary>A table that the service needs is not in the package.</summary>
    public const string MissingTable = "missing-table";

    /// <summary>A table lacks a field that the service needs, or describes it otherwise than the service reads it.</summary>
    public const string TableFields = "table-fields";

    /// <summary>A file is not UTF-8.</summary>
    public const string Utf8 = "utf-8";

    /// <summary>A file starts with a byte order mark.</summary>
    public const string ByteOrderMark = "byte-order-mark";

    /// <summary>A file has carriage returns.</summary>
    public const string LineFeedsOnly = "line-feeds-only";

    /// <summary>A file does not end with a line feed.</summary>
    public const string FinalNewline = "final-newline";

    /// <summary>Quotes in a CSV row are not placed as RFC 4180 says.</summary>
    public const string CsvQuoting = "csv-quoting";

    /// <summary>The header row is not the list of fields in order.</summary>
    public const string Header = "header";

    /// <summary>A row has more or fewer cells than the table has fields.</summary>
    public const string RowShape = "row-shape";

    /// <summary>A cell starts or ends with a blank.</summary>
    public const string BlankEdges = "blank-edges";

    /// <summary>A cell holds a line break or another control character.</summary>
    public const string ControlCharacter = "control-character";

    /// <summary>A cell is not of its field's type.</summary>
    public const string Type = "type";

    /// <summary>A required cell is blank.</summary>
    public const string Required = "required";

    /// <summary>A value stands twice in a field that allows it once.</summary>
    public const string Unique = "unique";

    /// <summary>A value is not one of those listed.</summary>
    public const string Enum = "enum";

    /// <summary>A value does not have the form asked for.</summary>
    public const string Pattern = "pattern";

    /// <summary>A number is below the least allowed.</summary>
    public const string Minimum = "minimum";

    /// <summary>A number is above the greatest allowed.</summary>
    public const string Maximum = "maximum";

    /// <summary>Two rows of a file have the same key.</summary>
    public const string PrimaryKey = "primary-key";

    /// <summary>A row refers to a row that is not there.</summary>
    public const string ForeignKey = "foreign-key";

    /// <summary>An item of a list refers to a row that is not there.</summary>
    public const string ItemReference = "item-reference";

    /// <summary>Rows do not stand in the order the table forces.</summary>
    public const string RowOrder = "row-order";

    /// <summary>The version is not SemVer, or not that of the newest heading of CHANGELOG.md.</summary>
    public const string VersionInChangelog = "version-in-changelog";

    /// <summary>°C and °F of an end point differ by more than 1 °F.</summary>
    public const string FahrenheitMatchesCelsius = "fahrenheit-matches-celsius";

    /// <summary>An end point does not rise with the rate, and no note says why.</summary>
    public const string EndPointRisesWithRate = "end-point-rises-with-rate";

    /// <summary>An end point does not rise with the cone, and no note says why.</summary>
    public const string EndPointRisesWithCone = "end-point-rises-with-cone";

    /// <summary>A row claims more confidence than sources that nobody saw can give.</summary>
    public const string UnseenSource = "unseen-source";

    /// <summary>A row from common practice alone claims more confidence than that.</summary>
    public const string PracticeSource = "practice-source";

    /// <summary>Position, kind or whole step of a cone disagree with its number.</summary>
    public const string ConePosition = "cone-position";

    /// <summary>A chart has no end point.</summary>
    public const string ChartHasEndPoints = "chart-has-end-points";

    /// <summary>A bending energy was fitted to fewer than two end points, or to points that do not rise.</summary>
    public const string EnergyHasEndPoints = "energy-has-end-points";

    /// <summary>A default of the kiln model is missing, in another unit, not above 0, or a span that runs downwards.</summary>
    public const string KilnDefault = "kiln-default";

    /// <summary>A wall lacks what a wall needs, or the material of the load is missing.</summary>
    public const string KilnMaterial = "kiln-material";

    /// <summary>A heat has no row for the smallest kilns, or a wall is none.</summary>
    public const string KilnSize = "kiln-size";

    /// <summary>A correction names a row, field or printed value that is not there.</summary>
    public const string CorrectionMatches = "correction-matches";

    /// <summary>An old id is still in its table, or the new one is not.</summary>
    public const string RenamedIds = "renamed-ids";

    /// <summary>An overlay has the name of another package in use.</summary>
    public const string OverlayName = "overlay-name";

    /// <summary>An overlay adds to a table that is not open to overlays.</summary>
    public const string OverlayTable = "overlay-table";

    /// <summary>A table of an overlay has other fields than that of the base package.</summary>
    public const string OverlayFields = "overlay-fields";

    /// <summary>A row of an overlay has the key of a row of another package.</summary>
    public const string OverlayOwnIds = "overlay-own-ids";

    /// <summary>A row of an overlay adds to a chart that is not the overlay's own.</summary>
    public const string OverlayOwnChart = "overlay-own-chart";

    /// <summary>The range or the formula of a thermocouple's tolerance contradicts itself.</summary>
    public const string ThermocoupleTolerance = "thermocouple-tolerance";

    /// <summary>A default that the heat-work answers need is missing, or in another unit.</summary>
    public const string HeatWorkDefault = "heat-work-default";
    /// <summary>A cone range does not rise, is given in part, or leaves the scale 022 … 14.</summary>
    public const string ConeRange = "cone-range";

    /// <summary>The rank beside a cone is not the position of that cone.</summary>
    public const string ConeRank = "cone-rank";

    /// <summary>The rate in the key of an end point is not the rate beside it.</summary>
    public const string RateKey = "rate-key";

    /// <summary>A body's steps over its best cone do not rise, or have nothing to count from.</summary>
    public const string OverfireSteps = "overfire-steps";

    /// <summary>A disagreement concerns a row that is not there.</summary>
    public const string DisagreementConcerns = "disagreement-concerns";

    /// <summary>A schedule segment has no target or two, or says wrongly which figures are published.</summary>
    public const string SegmentTarget = "segment-target";

    /// <summary>A schedule template has no segments, gaps in their numbers, or cones that do not hang together.</summary>
    public const string TemplateSegments = "template-segments";

    /// <summary>A schedule template reduces at a temperature at which gas can explode.</summary>
    public const string ReductionTemperature = "reduction-temperature";

    /// <summary>A limit by thickness rises with the thickness, or its band has two spans.</summary>
    public const string ThicknessLimit = "thickness-limit";
    /// <summary>The upper end of a range lies below its lower end.</summary>
    public const string RangeOrder = "range-order";

    /// <summary>A release of gas has another temperature than the landmark or the limit that it names.</summary>
    public const string GasRelease = "gas-release";

    /// <summary>A percentage without its own confidence, or with more than its sources can give.</summary>
    public const string PercentEvidence = "percent-evidence";

    /// <summary>A row claims a print, and its note says that something in it is practice or was recalled.</summary>
    public const string NoteEvidence = "note-evidence";

    /// <summary>A row that claims a print names a year after the newest edition of its sources.</summary>
    public const string CitedYear = "cited-year";

    /// <summary>A source says more, or less, of how it was seen than can be.</summary>
    public const string SeenThrough = "seen-through";

    /// <summary>A row is corroborated by fewer than two witnesses.</summary>
    public const string Witnesses = "witnesses";

    /// <summary>A limit is superseded by none that is there, or was checked against nothing.</summary>
    public const string LimitRegister = "limit-register";

    /// <summary>Confidence of a single value that contradicts the row.</summary>
    public const string ValueConfidence = "value-confidence";

    /// <summary>An ingredient is neither a colorant nor an additive, or both.</summary>
    public const string IngredientKnown = "ingredient-known";

    /// <summary>Something that a computation looks up in the package is missing.</summary>
    public const string NeededByComputation = "needed-by-computation";

    /// <summary>A message is not of the syntax of templates, or names a parameter that the English text has not.</summary>
    public const string MessageText = "message-text";

    /// <summary>A text tells of no row, or a row that should be told to students is not.</summary>
    public const string TextRow = "text-row";

    /// <summary>A text has words that don't belong there: a promise that nothing can happen, an id, the archivist's shorthand.</summary>
    public const string TextWords = "text-words";
}
