using ConeService.Contract.Colours;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Colours;
using ConeService.Firing.Tests.Support;

namespace ConeService.Firing.Tests.Colours;

/// <summary>How far a colour that rests on several rows can be trusted.</summary>
public class ColourConfidenceTests
{
    private static readonly ColourCatalogue Catalogue = new(Reference.Charts);

    // What was recalled is weaker than practice, as docs/heat-work.md has it for cones: the verdict is as weak as its weakest note.
    [Theory]
    [InlineData(Confidence.FromMemory, Confidence.CommonPractice, Confidence.FromMemory)]
    [InlineData(Confidence.Published, Confidence.CommonPractice, Confidence.CommonPractice)]
    [InlineData(Confidence.Derived, Confidence.FromMemory, Confidence.FromMemory)]
    public void A_colour_of_two_notes_is_as_weak_as_the_weaker(Confidence one, Confidence other, Confidence weaker)
    {
        var note = ColourAnswers.Of(Reference.Dataset.ColourNotes[0], Catalogue);

        var verdict = ColourVerdict.Of(
            ColourBasis.Interaction, Message.Verbatim("")!, note with { Confidence = one }, note with { Confidence = other });

        Assert.Equal(weaker, verdict.Confidence);
    }
}
