using ConeService.Contract.Answers;
using ConeService.Contract.Datasets;
using ConeService.Data;

namespace ConeService.Contract.Study;

/// <summary>What goes wrong with ware, why, how to tell, and what to change.</summary>
/// <param name="Id">Id of the fault.</param>
/// <param name="Name">The fault in a few words.</param>
/// <param name="Synonyms">Other words that people use for it.</param>
/// <param name="Tell">How to tell it from other faults, by looking at the ware.</param>
/// <param name="Stages">At which stages of the work it shows; this package's reading.</param>
/// <param name="Causes">Why it happens, each with what gives it away and what to change.</param>
/// <param name="Unlike">Ids of faults that it is mistaken for.</param>
/// <param name="Cautions">Ids of the cautions that go with it.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far this can be trusted.</param>
/// <param name="Note">What a reader must know.</param>
public sealed record Fault(
    string Id,
    string Name,
    IReadOnlyList<string> Synonyms,
    string Tell,
    IReadOnlyList<WorkStage> Stages,
    IReadOnlyList<FaultCause> Causes,
    IReadOnlyList<string> Unlike,
    IReadOnlyList<string> Cautions,
    IReadOnlyList<string> Sources,
    Confidence Confidence,
    string? Note)
{
    /// <summary>Address of its row of the data package, with the places in its sources.</summary>
    public Address Row => TableAddress.Of("faults", Id);
}

/// <summary>One cause of a fault.</summary>
/// <param name="Id">Id of the cause.</param>
/// <param name="Cause">Why it happens.</param>
/// <param name="Tell">What gives this cause away among the causes of the fault.</param>
/// <param name="Change">What to change.</param>
/// <param name="Landmarks">Ids of the landmarks of the firing at which it happens or is prevented.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far this can be trusted.</param>
/// <param name="Note">What a reader must know.</param>
public sealed record FaultCause(
    string Id,
    string Cause,
    string Tell,
    string Change,
    IReadOnlyList<string> Landmarks,
    IReadOnlyList<string> Sources,
    Confidence Confidence,
    string? Note)
{
    /// <summary>Address of its row of the data package, with the places in its sources.</summary>
    public Address Row => TableAddress.Of("fault-causes", Id);
}
