using ConeService.Api.Http;
using ConeService.Api.Tests.Support;
using ConeService.Contract.Texts;
using ConeService.Data;
using Microsoft.AspNetCore.Http;

namespace ConeService.Api.Tests.Http;

/// <summary>What is kept of a package is kept for each language, and in the words of that package.</summary>
public class SnapshotTests
{
    private const string German = "http.one-value,anyone,de,ein Wert";

    [Fact]
    public void A_package_without_sentences_of_its_own_speaks_from_the_embedded_book() =>
        Assert.Same(MessageBook.Embedded, MessageBook.For(DatasetLoader.LoadEmbedded()));

    // The package may be swapped between the choice of the language and the making of the body.
    [Fact]
    public async Task A_body_is_made_in_the_words_of_its_own_package()
    {
        using var overlay = new Overlay("german").With("messages", German);
        var snapshot = new Snapshot(DatasetLoader.LoadEmbedded([overlay.Directory]));
        Speech.Use(new(MessageBook.Embedded, "de"));
        Assert.Equal("ein Wert", await Body(Prepare(snapshot)));
        Speech.Use(new(MessageBook.Embedded));
        Assert.Equal("one value", await Body(Prepare(snapshot)));
    }

    [Fact]
    public void A_body_is_made_once_in_each_language()
    {
        using var overlay = new Overlay("german").With("messages", German);
        var snapshot = new Snapshot(DatasetLoader.LoadEmbedded([overlay.Directory]));
        var english = Prepare(snapshot);
        Speech.Use(new(snapshot.Messages, "de"));
        var german = Prepare(snapshot);
        Assert.NotSame(english, german);
        Assert.Same(german, Prepare(snapshot));
        Speech.Use(new(snapshot.Messages));
        Assert.Same(english, Prepare(snapshot));
    }

    private static PreparedBody Prepare(Snapshot snapshot) =>
        snapshot.Prepare("said", static _ => PreparedBody.Text(Message.Of("http.one-value").ToString(), "text/plain"));

    private static async Task<string> Body(PreparedBody body)
    {
        var context = new DefaultHttpContext();
        using var written = new MemoryStream();
        context.Response.Body = written;
        await body.ExecuteAsync(context);
        return System.Text.Encoding.UTF8.GetString(written.ToArray());
    }
}
