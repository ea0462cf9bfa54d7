using System.Diagnostics;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Materials;

namespace ConeService.Firing.Loads.Rules;

/// <summary>
/// What a caller says that a coat holds, and what each metal means for food, for who breathes its fume, and for neighbours.
/// Lead has a rule of its own in <see cref="FoodRule"/>; tin means nothing but to its neighbours.
/// </summary>
internal sealed class MetalRule : IPieceRule
{
    // Of these enough comes out of a glaze that is not proven to weigh where food touches; metals-in-coats.
    private static readonly EnumSet<Fume> ComingOut =
        new([Fume.Barium, Fume.Cadmium, Fume.Selenium, Fume.Nickel, Fume.Vanadium, Fume.Manganese]);

    public IReadOnlyList<string> RestsOn { get; } = [LoadRuleIds.Metals];

    public Version Since { get; } = new(1, 7);

    public void Judge(PieceCase c, Judgement judgement)
    {
        foreach (var item in c.Piece.Coats)
        {
            if (item.Contains.IsEmpty) continue;
            var touches = c.Piece.Use == PieceUse.Food && item.Where != CoatWhere.Outside;
            foreach (var metal in item.Contains.Items())
            {
                if (metal is Fume.Lead or Fume.Tin) continue;
                var weighs = touches && ComingOut.Has(metal);
                var (code, severity) = weighs
                    ? (ReasonCode.NotForFood, ReasonSeverity.Review)
                    : (ReasonCode.MetalInCoat, ReasonSeverity.Note);
                judgement.Find(code, severity)?.Because(
                    LoadRuleIds.Metals, item.Coat, Means(metal, item.Coat.NameFirst),
                    touches ? Message.Of("loads.test-before-food") : null);
            }
        }
    }

    private static Message Means(Fume metal, string coat) => metal switch
    {
        Fume.Barium => Message.Of("loads.holds-barium", ("coat", coat)),
        Fume.Cadmium => Message.Of("loads.holds-cadmium", ("coat", coat)),
        Fume.Selenium => Message.Of("loads.holds-selenium", ("coat", coat)),
        Fume.Nickel => Message.Of("loads.holds-nickel", ("coat", coat)),
        Fume.Vanadium => Message.Of("loads.holds-vanadium", ("coat", coat)),
        Fume.Manganese => Message.Of("loads.holds-manganese", ("coat", coat)),
        Fume.Lithium => Message.Of("loads.holds-lithium", ("coat", coat)),
        Fume.Zinc => Message.Of("loads.holds-zinc", ("coat", coat)),
        Fume.Chrome => Message.Of("loads.holds-chrome", ("coat", coat)),
        Fume.Copper => Message.Of("loads.holds-copper", ("coat", coat)),
        _ => throw new UnreachableException($"{metal} has no sentence."),
    };
}
