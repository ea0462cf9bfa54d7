using ConeService.Contract.Json;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Contract.Loads;

/// <summary>One reason.</summary>
/// <param name="Code">Stable name of the kind of reason, at /v1/reason-codes.</param>
/// <param name="Severity">How much it weighs: note leaves the verdict at accept.</param>
/// <param name="Message">A sentence that can be shown to a student.</param>
/// <param name="Instead">
/// What would mend this reason; null where nothing has to be changed. What suits the whole piece stands with it.
/// </param>
/// <param name="Rule">The load rule it rests on, at /v1/load-rules/{id}.</param>
/// <param name="Sources">Ids of the sources of the rule and of the material.</param>
/// <param name="Confidence">The weaker confidence of the rule and of the material.</param>
/// <param name="Pointer">
/// JSON pointer into the request, to the piece, its body or its coat, or to what of the load it speaks of; in the table of
/// detail=verdicts, where pieces share a reason, from the piece on: /coats/0.
/// </param>
/// <param name="Parameters">What it speaks of, for programs.</param>
/// <param name="Texts">The reason told to two readers.</param>
public sealed record Reason(
    ReasonCode Code,
    ReasonSeverity Severity,
    Message Message,
    Message? Instead,
    string Rule,
    IReadOnlyList<string> Sources,
    Confidence Confidence,
    string Pointer,
    ReasonParameters Parameters,
    ReasonTexts Texts);

/// <summary>What a reason speaks of.</summary>
/// <param name="Material">Id of the body or coat; null where none is meant, and for the caller's own.</param>
/// <param name="MaterialName">What the body or coat is called; null where none is meant.</param>
/// <param name="FiringCone">The cone of the firing that was judged.</param>
/// <param name="Cones">
/// The range that the firing was held against: of a bisque that of the body's bisque, else of its maturity, or of the coat. Null
/// where no range is meant, or none is known.
/// </param>
/// <param name="StepsOver">Whole cones above that range, negative below it, 0 within it; null without one.</param>
/// <param name="OtherPieces">Ids of the pieces that bring it about, the first three; none where it lies in the piece itself.</param>
public sealed record ReasonParameters(
    string? Material, string? MaterialName, string FiringCone, ConeRange? Cones, int? StepsOver, IReadOnlyList<string> OtherPieces);

/// <summary>A reason told to two readers.</summary>
/// <param name="Student">What happens, and what to do.</param>
/// <param name="Technician">Range, rule and source.</param>
public sealed record ReasonTexts(Message Student, Message Technician);

/// <summary>A reason of the table of detail=verdicts.</summary>
/// <param name="Number">Its number, from 1, to which pieces refer.</param>
/// <param name="Reason">The reason.</param>
public sealed record NumberedReason(int Number, [property: Flat] Reason Reason);

/// <summary>The kinds of reason that a load check gives.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Items">The codes, in the order in which the contract has them; new ones may be added, and none goes.</param>
public sealed record ReasonCodeList(string DatasetVersion, IReadOnlyList<ReasonCodeDescription> Items);

/// <summary>A kind of reason.</summary>
/// <param name="Id">The code.</param>
/// <param name="Name">What it is about, in a few words.</param>
/// <param name="Meaning">What it means, in a sentence.</param>
/// <param name="LoadRules">Ids of the load rules that it may rest on.</param>
public sealed record ReasonCodeDescription(ReasonCode Id, Message Name, Message Meaning, IReadOnlyList<string> LoadRules);
