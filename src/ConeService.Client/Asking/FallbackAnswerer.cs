using ConeService.Client.Reading;
using ConeService.Contract.Datasets;
using Microsoft.Extensions.Logging;

namespace ConeService.Client.Asking;

/// <summary>Asks the service, and answers from the data of this process when it is away.</summary>
/// <param name="service">The service.</param>
/// <param name="local">The data of this process.</param>
/// <param name="package">The same, for its checksum.</param>
/// <param name="log">Told each time the service is away.</param>
internal sealed partial class FallbackAnswerer(
    ServiceAnswerer service, LocalAnswerer local, LocalPackage package, ILogger<FallbackAnswerer> log) : IAnswerer
{
    // What the service said of its data when it was last there.
    private volatile Stamp? stamp;

    public async Task<Answered<T>> AskAsync<T>(Question<T> question, CancellationToken cancel)
    {
        try
        {
            var answer = await service.AskAsync(question, cancel);
            if (question.NeedsSamePackage) await LearnAsync(answer.DatasetVersion, cancel);
            if (answer.Value is DatasetDescription told) stamp = new(told.DatasetVersion, told.Checksum);
            return answer;
        }
        catch (ConeServiceAwayException away)
            when (question.Local is not null && away is not RouteMissingException && Refusals.MayBeAnsweredLocally(away))
        {
            if (question.NeedsSamePackage) await RequireSamePackageAsync(away, cancel);
            Away(log, question.Route, away.Because);
            return await local.AskAsync(question, away.Because, cancel);
        }
    }

    [LoggerMessage(Level = LogLevel.Warning, Message = "{Route} is answered from local data: {Because}")]
    private static partial void Away(ILogger log, string route, AwayReason because);

    // A studio's own clays may be known to the service alone: what they are there decides a load, so only the same data may.
    private async Task RequireSamePackageAsync(ConeServiceAwayException away, CancellationToken cancel)
    {
        var dataset = (await package.OpenAsync(cancel)).Reference.Dataset;
        if (stamp is not { } known)
        {
            throw new ConeServiceAwayException(
                away.Because,
                $"{away.Message} A load is not judged from local data before the service has told which data it uses.", away);
        }

        if (known.Checksum == dataset.Checksum) return;
        throw new ConeServiceAwayException(
            away.Because,
            $"{away.Message} A load is not judged from local data {dataset.VersionId}, since the service uses other data "
            + $"({known.DatasetVersion}).", away);
    }

    private async Task LearnAsync(string datasetVersion, CancellationToken cancel)
    {
        if (stamp?.DatasetVersion == datasetVersion) return;
        try
        {
            var told = (await service.AskAsync(DatasetClient.Description, cancel)).Value;
            stamp = new(told.DatasetVersion, told.Checksum);
        }
        catch (ConeServiceAwayException)
        {
            // The answer is there all the same; the next one learns it.
        }
    }

    private sealed record Stamp(string DatasetVersion, string Checksum);
}
