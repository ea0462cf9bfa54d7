using ConeService.Contract.Texts;
using ConeService.Firing.Tests.Support;

namespace ConeService.Firing.Tests.Practice;

/// <summary>Every row that students are told of carries its sentences wherever it is answered.</summary>
public class StudentLayerTests
{
    private static readonly FiringReference Firing = FiringReference.Open(Reference.Dataset);

    [Fact]
    public void Rows_are_answered_with_their_sentences()
    {
        IEnumerable<(string Id, Message? Student)> told =
        [
            .. Firing.Practice.Cautions().Items.Select(c => (c.Id, c.Student)),
            .. Firing.Practice.Processes().Items.Select(p => (p.Id, p.Student)),
            .. Reference.Dataset.Processes.SelectMany(p => Firing.Practice.Process(p.Id).Cautions).Select(c => (c.Id, c.Student)),
            .. Reference.Dataset.ClayBodies.Select(b => (b.Id, Firing.Materials.Body(b.Id).ClayBody.Student)),
            .. Reference.Dataset.Glazes.Select(g => (g.Id, Firing.Materials.Glaze(g.Id).Glaze.Student)),
            .. Reference.Dataset.Colorants.Select(c => Firing.Colours.Colorant(c.Id))
                .SelectMany(d => d.ColourNotes.Select(n => (n.Id, n.Student)).Append((d.Colorant.Id, d.Colorant.Student))),
            .. Firing.Cones.Facts().Items.Select(f => (f.Id, f.Student)),
        ];
        Assert.All(told, t => Assert.True(t.Student?.ToString().EndsWith('.'), t.Id));
    }

    [Fact]
    public void A_text_is_that_of_its_row() => Assert.StartsWith(
        "Carbon monoxide is a gas that you can't see or smell, and it can kill.",
        Firing.Practice.Caution("carbon-monoxide").Caution.Student!.ToString(), StringComparison.Ordinal);
}
