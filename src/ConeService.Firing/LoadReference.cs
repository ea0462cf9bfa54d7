using System.Globalization;
using ConeService.Contract.Answers;
using ConeService.Contract.Batches;
using ConeService.Contract.Loads;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Loads;
using ConeService.Firing.Reading;

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
    /// <param name="request">The load.</param>
    /// <param name="detail">full or verdicts; null: full.</param>
    /// <exception cref="RefusedException">The request can't be read; carries every finding.</exception>
    public LoadAnswer Check(LoadRequest request, string? detail = null)
    {
        var together = new Together();
        var told = together.Try(() => Detail(detail));
        var answer = together.Try(() => check.Check(request, told));
        together.Done();
        return answer!;
    }

    /// <summary>Reads a load, and judges nothing.</summary>
    /// <exception cref="RefusedException">The request can't be read; carries every finding.</exception>
    internal void Read(LoadRequest request) => check.Read(request);

    /// <summary>The rules without sentences.</summary>
    internal QuietCheck Quiet() => check.Quiet();

    /// <summary>Judges several loads, in the order asked; what is refused carries its problems.</summary>
    /// <param name="request">The loads.</param>
    /// <param name="detail">full or verdicts, for all; null: full.</param>
    /// <exception cref="RefusedException">There are no loads, or too many.</exception>
    public BatchAnswer<LoadAnswer> CheckEach(LoadBatchRequest request, string? detail = null)
    {
        BatchCheck.Require(request.Items, LoadLimits.MostLoads);
        RequireTogether(request.Items!);
        var together = new Together();
        var told = together.Try(() => Detail(detail));
        var answer = Batch.Answer(datasetVersion, request.Items!, load => check.Check(load, told));
        if (!together.Any) return answer;
        foreach (var problem in answer.Items.SelectMany(i => i.Problems)) together.Findings.Add(problem);
        together.Done();
        return answer;
    }

    /// <summary>Judges one body, its coats and one firing.</summary>
    /// <exception cref="RefusedException">The request can't be read; carries every finding.</exception>
    public PairingAnswer Check(PairingRequest request) => check.Check(request);

    /// <summary>Judges one body, its coats and one firing, asked by the parameters of a link.</summary>
    /// <param name="query">The parameters.</param>
    /// <exception cref="RefusedException">They can't be read; carries every finding.</exception>
    public PairingAnswer Check(PairingQuery query)
    {
        try
        {
            return check.Check(query.Posted());
        }
        catch (RefusedException refused)
        {
            throw new RefusedException([.. refused.Findings.Select(f => f with { Field = PairingQuery.Parameter(f.Field) })]);
        }
    }

    /// <summary>Judges several pairings, in the order asked; what is refused carries its problems.</summary>
    /// <exception cref="RefusedException">There are no pairings, or too many.</exception>
    public BatchAnswer<PairingAnswer> CheckEach(PairingBatchRequest request)
    {
        BatchCheck.Require(request.Items);
        return Batch.Answer(datasetVersion, request.Items!, Check);
    }

    /// <summary>The kinds of reason that a check gives.</summary>
    public ReasonCodeList ReasonCodes() => catalogue.ReasonCodes();

    /// <summary>The rules of loading.</summary>
    public LoadRuleList Rules() => catalogue.Rules();

    /// <summary>A rule of loading.</summary>
    /// <exception cref="RefusedException">There is none of that id.</exception>
    public LoadRuleDetail Rule(string id) => catalogue.Rule(id);

    /// <summary>The kinds of firing and what heats kilns.</summary>
    public FiringKindList Kinds() => catalogue.Kinds();

    /// <summary>Where sources contradict each other.</summary>
    public DisagreementList Disagreements() => catalogue.Disagreements();

    // What each load may have, fifty loads together may not: the answer has some kilobytes for each piece and each coat.
    private static void RequireTogether(IReadOnlyList<LoadRequest?> loads)
    {
        var check = new RequestCheck();
        var pieces = loads.Sum(l => (long)(l?.Pieces?.Count ?? 0));
        check.Require(
            pieces <= LoadLimits.MostPiecesTogether, FindingCodes.TooManyPieces, "/items", pieces.ToString(CultureInfo.InvariantCulture),
            Message.Of("loads.too-many-pieces-together", ("pieces", pieces)),
            [Message.Of("loads.pieces-together-allowed", ("most", LoadLimits.MostPiecesTogether))], Message.Of("batches.send-several"));
        var coats = loads.Sum(l => l?.Pieces?.Sum(p => (long)(p?.Coats?.Count ?? 0)) ?? 0);
        check.Require(
            coats <= LoadLimits.MostCoatsTogether, FindingCodes.TooManyCoats, "/items", coats.ToString(CultureInfo.InvariantCulture),
            Message.Of("loads.too-many-coats-together", ("coats", coats)),
            [Message.Of("loads.coats-together-allowed", ("most", LoadLimits.MostCoatsTogether))], Message.Of("batches.send-several"));
        check.Done();
    }

    private static LoadDetail Detail(string? sent) =>
        string.IsNullOrWhiteSpace(sent) ? LoadDetail.Full
        : EnumWords.TryRead(sent, out LoadDetail detail) ? detail
        : throw new RefusedException([UnknownWord.Of<LoadDetail>(sent, "detail", "detail")]);
}
