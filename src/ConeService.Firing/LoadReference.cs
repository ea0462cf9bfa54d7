using ConeService.Contract.Answers;
using ConeService.Contract.Batches;
using ConeService.Contract.Loads;
using ConeService.Firing.Loads;

namespace ConeService.Firing;

/// <summary>Loads and pairings judged before they are fired, and the rules they are judged by.</summary>
public sealed class LoadReference
{
    private readonly LoadCheck check;
    private readonly LoadRuleCatalogue catalogue;
    private readonly string datasetVersion;

    internal LoadReference(LoadCheck check, LoadRuleCatalogue catalogue, string datasetVersion) =>
        (this.check, this.catalogue, this.datasetVersion) = (check, catalogue, datasetVersion);

    /// <summary>Judges a load.</summary>
    /// <exception cref="RefusedException">The request can't be read; carries every finding.</exception>
    public LoadAnswer Check(LoadRequest request) => check.Check(request);

    /// <summary>Judges one body, its coats and one firing.</summary>
    /// <exception cref="RefusedException">The request can't be read; carries every finding.</exception>
    public PairingAnswer Check(PairingRequest request) => check.Check(request);

    /// <summary>Judges several pairings, in the order asked; what is refused carries its problems.</summary>
    /// <exception cref="RefusedException">There are no pairings, or too many.</exception>
    public BatchAnswer<PairingAnswer> CheckEach(PairingBatchRequest request)
    {
        BatchCheck.Require(request.Items);
        return Batch.Answer(datasetVersion, request.Items!, Check);
    }

    /// <summary>The rules of loading.</summary>
    public LoadRuleList Rules() => catalogue.Rules();

    /// <summary>A rule of loading.</summary>
    /// <exception cref="RefusedException">There is none of that id.</exception>
    public LoadRuleDetail Rule(string id) => catalogue.Rule(id);

    /// <summary>The kinds of firing and what heats kilns.</summary>
    public FiringKindList Kinds() => catalogue.Kinds();

    /// <summary>Where sources contradict each other.</summary>
    public DisagreementList Disagreements() => catalogue.Disagreements();
}
