using ConeService.Contract.Answers;
using ConeService.Contract.Loads;
using ConeService.Firing.Loads;

namespace ConeService.Firing;

/// <summary>Loads and pairings judged before they are fired, and the rules they are judged by.</summary>
public sealed class LoadReference
{
    private readonly LoadCheck check;
    private readonly LoadRuleCatalogue catalogue;

    internal LoadReference(LoadCheck check, LoadRuleCatalogue catalogue) => (this.check, this.catalogue) = (check, catalogue);

    /// <summary>Judges a load.</summary>
    /// <exception cref="RefusedException">The request can't be read; carries every finding.</exception>
    public LoadAnswer Check(LoadRequest request) => check.Check(request);

    /// <summary>Judges one body, its coats and one firing.</summary>
    /// <exception cref="RefusedException">The request can't be read; carries every finding.</exception>
    public PairingAnswer Check(PairingRequest request) => check.Check(request);

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
