using ConeService.Contract.Loads;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Cones;
using ConeService.Firing.Materials;
using SentRange = ConeService.Contract.Json.ConeRange;

namespace ConeService.Firing.Loads;

/// <summary>
/// Makes of what a rule found a reason as data: its place, what it speaks of, its sources, and its texts for two readers.
/// </summary>
internal static class ReasonMaker
{
    private static readonly string[] Places =
        [.. Enumerable.Range(0, LoadLimits.MostCoats).Select(i => FormattableString.Invariant($"/coats/{i}"))];

    /// <summary>A single reason, with the sources and the confidence of its rule and of the material.</summary>
    /// <param name="tables">The tables.</param>
    /// <param name="firing">The firing judged.</param>
    /// <param name="piece">The piece; null for the load as a whole.</param>
    /// <param name="code">What sort of reason.</param>
    /// <param name="severity">How much it weighs.</param>
    /// <param name="rule">Id of the load rule.</param>
    /// <param name="cited">The material whose figures were used; null for none.</param>
    /// <param name="message">What is wrong.</param>
    /// <param name="instead">What would work; null for nothing.</param>
    /// <param name="within">Where in the piece it lies; null: where the material is.</param>
    /// <param name="others">Ids of the pieces that bring it about.</param>
    public static Reason Make(
        LoadTables tables, PlannedFiring firing, Piece? piece, ReasonCode code, ReasonSeverity severity, string rule, Material? cited,
        Message message, Message? instead, string? within = null, IReadOnlyList<string>? others = null)
    {
        var row = tables.Rule(rule);
        var confidence = cited?.Confidence is { } told ? ConfidenceOrder.Weakest([row.Confidence, told]) : row.Confidence;
        var sources = cited is null or { Sources.Count: 0 } ? row.Sources : tables.SourcesOf(row, cited);
        var (cones, spoken) = Range(rule, cited);
        var over = cones is { } range ? Over(firing.Cone, range.Min, range.Max) : (int?)null;
        return new(
            code, severity, message, instead, rule, sources, confidence,
            piece is null ? PlaceInLoad(code) : piece.At + (within ?? Within(piece, cited)),
            new(
                cited?.Id, cited?.Name, firing.Cone.Text,
                cones is { } r ? new SentRange(r.Min.Text, r.Best?.Text, r.Max?.Text) : null, over, others ?? []),
            new(
                instead is null ? message.To(MessageAudience.Student) : Message.Sentences(message, instead).To(MessageAudience.Student),
                Technician(code, firing, cited, spoken, over, row, sources, confidence)));
    }

    /// <summary>The same reason in other words.</summary>
    public static Reason Retold(Reason reason, Message message, Message instead) => reason with
    {
        Message = message,
        Instead = instead,
        Texts = reason.Texts with { Student = Message.Sentences(message, instead).To(MessageAudience.Student) },
    };

    /// <summary>The same reason with other advice.</summary>
    public static Reason Advising(Reason reason, Message instead) => Retold(reason, reason.Message, instead);

    /// <summary>What a kind of reason is about, in a few words.</summary>
    public static Message Title(ReasonCode code) => Message.Of("loads.reason-title", ("code", EnumWords.Word(code)));

    /// <summary>What a kind of reason means.</summary>
    public static Message Meaning(ReasonCode code) => Message.Of("loads.reason-meaning", ("code", EnumWords.Word(code)));

    private static Message Technician(
        ReasonCode code, PlannedFiring firing, Material? cited, Message? range, int? over, LoadRuleRow row, IReadOnlyList<string> sources,
        Confidence confidence)
    {
        var (word, trust) = (EnumWords.Word(code), EnumWords.Word(confidence));
        return (range is null
            ? Message.Of(
                "loads.technician",
                ("code", word), ("material", cited?.Name ?? "none"), ("cone", firing.Cone.Text), ("rule", row.Id), ("sources", sources),
                ("confidence", trust))
            : Message.Of(
                "loads.technician-range",
                ("code", word), ("material", cited!.Name), ("range", range), ("cone", firing.Cone.Text),
                ("side", over > 0 ? "above" : over < 0 ? "below" : "within"), ("steps", Math.Abs(over!.Value)), ("rule", row.Id),
                ("sources", sources), ("confidence", trust))).To(MessageAudience.Technician);
    }

    private static ((PotterCone Min, PotterCone? Best, PotterCone? Max)? Cones, Message? Spoken) Range(string rule, Material? cited) =>
        cited switch
        {
            Body body when rule is LoadRuleIds.BisqueRange or LoadRuleIds.BisqueBelowMaturity =>
                ((body.BisqueMin, null, body.BisqueMax), body.BisqueSpoken),
            Body { Mature: { } mature } => ((mature.Min, mature.Best, mature.Max), mature.Spoken),
            Coat coat => ((coat.Min, coat.Best, coat.Max), coat.Range),
            _ => (null, null),
        };

    private static int Over(PotterCone cone, PotterCone min, PotterCone? max) =>
        cone.IsBelow(min) ? -cone.StepsTo(min) : max is not null && max.IsBelow(cone) ? max.StepsTo(cone) : 0;

    private static string Within(Piece piece, Material? cited)
    {
        if (cited is Body body) return body.Id is null ? "/ownBody" : "/body";
        if (cited is not null)
        {
            foreach (var item in piece.Coats)
            {
                if (ReferenceEquals(item.Coat, cited)) return CoatPlace(item.Place);
            }
        }

        return "";
    }

    /// <summary>The pointer of a coat within its piece.</summary>
    public static string CoatPlace(int place) =>
        place < Places.Length ? Places[place] : FormattableString.Invariant($"/coats/{place}");

    private static string PlaceInLoad(ReasonCode code) => code switch
    {
        ReasonCode.KilnCannotHoldAtmosphere or ReasonCode.KilnCannotReachCone or ReasonCode.VapourKilnOnly => "/kiln",
        ReasonCode.FumesOnNeighbours or ReasonCode.GlazeConesApart or ReasonCode.LoadTooLarge => "/pieces",
        _ => "/firing",
    };
}
