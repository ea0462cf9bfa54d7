using System.Text.Json;
using ConeService.Client.Reading;
using ConeService.Contract.Answers;
using ConeService.Contract.Json;
using ConeService.Contract.Texts;
using ConeService.Firing;

namespace ConeService.Client.Asking;

/// <summary>Answers from the data package and the computations of this process: those that the service answers from.</summary>
/// <param name="package">The package.</param>
/// <param name="time">The clock, for starts of firings that are chosen from now on.</param>
internal sealed class LocalAnswerer(LocalPackage package, TimeProvider time) : IAnswerer
{
    public Task<Answered<T>> AskAsync<T>(Question<T> question, CancellationToken cancel) =>
        AskAsync(question, AwayReason.NoAddress, cancel);

    public async Task<Answered<T>> AskAsync<T>(Question<T> question, AwayReason because, CancellationToken cancel)
    {
        question.Require();
        if (question.Local is not { } local) throw new ConeServiceAwayException(because, "There is no service: no address was given.");
        var opened = await package.OpenAsync(cancel);
        // On a thread of its own: a fit computes for a while, and whoever asks may hold the thread of a window.
        return await Task.Run(() => AnswerAsync(local, opened, because, cancel), cancel);
    }

    private async Task<Answered<T>> AnswerAsync<T>(
        Func<FiringReference, DateTimeOffset, Task<T>> local, OpenedPackage opened, AwayReason because, CancellationToken cancel)
    {
        Speech.Use(new(opened.Messages));
        Patience.Use(cancel);
        try
        {
            var value = await local(opened.Reference, time.GetUtcNow());
            var json = JsonSerializer.SerializeToUtf8Bytes(value, ConeJson.Options.GetTypeInfo(typeof(T)));
            return new(AnswerReader.Read<T>(json), json, AnswerOrigin.Local, because, opened.Reference.Dataset.VersionId);
        }
        catch (RefusedException refused)
        {
            throw Refusals.Said(refused);
        }
    }
}
