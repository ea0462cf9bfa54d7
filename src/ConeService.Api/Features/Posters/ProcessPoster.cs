using ConeService.Api.Features.Cards;
using ConeService.Firing;

namespace ConeService.Api.Features.Posters;

/// <summary>One page on a firing process, as its card tells it.</summary>
internal static class ProcessPoster
{
    public static Poster Of(FiringReference reference, string id)
    {
        var detail = reference.Practice.Process(id);
        var process = detail.Process;
        var sheet = new PosterSheet().Say(process.Student?.ToString() ?? process.Effect, "lead")
            .List("Dangers, and what to do", detail.Cautions.Select(CardWords.InFull))
            .List("The ware", [ProcessCard.Water(process), ProcessCard.Food(process), ProcessCard.Microwave(process)])
            .List("The firing", ProcessCard.Firing(process));
        if (detail.AddedMaterials.Count > 0)
        {
            sheet.Table("What goes in, and when", ["Material", "When"],
                [.. detail.AddedMaterials.Select(m => (string[])[CardWords.Sentence(m.Material), ProcessCard.When(m)])], [0.3, 0.7]);
        }

        sheet.Say($"People nearby: {process.PeopleNearby}").Say(detail.FoodContact.Statement.ToString())
            .Say(detail.Notice.ToString(), "warn");
        return new("process-" + process.Id, process.Name, [sheet], detail.Sources);
    }
}
