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
    // Of these enough comes out of any glaze that is not proven to weigh where food touches, of the others out of matt ones;
    // metals-in-coats.
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
            var matt = item.Coat.IsMatt;
            foreach (var metal in item.Contains.Items())
            {
                if (metal is Fume.Lead or Fume.Tin) continue;
                var weighs = touches && (matt || ComingOut.Has(metal));
                var (code, severity) = weighs
                    ? (ReasonCode.NotForFood, ReasonSeverity.Review)
                    : (ReasonCode.MetalInCoat, ReasonSeverity.Note);
                judgement.Find(code, severity)?.Because(
                    LoadRuleIds.Metals, item.Coat, Means(metal, item.Coat.NameFirst, matt ? "matt" : "other"),
                    weighs ? Message.Of("loads.test-before-food") : touches ? Message.Of("loads.test-where-it-touches") : null);
            }
        }
    }

    private static Message Means(Fume metal, string coat, string surface) => metal switch
    {
        Fume.Barium => Message.Of("loads.holds-barium", ("coat", coat)),
        Fume.Cadmium => Message.Of("loads.holds-cadmium", ("coat", coat)),
        Fume.Selenium => Message.Of("loads.holds-selenium", ("coat", coat)),
        Fume.Nickel => Message.Of("loads.holds-nickel", ("coat", coat)),
        Fume.Vanadium => Message.Of("loads.holds-vanadium", ("coat", coat)),
        Fume.Manganese => Message.Of("loads.holds-manganese", ("coat", coat)),
        Fume.Lithium => Message.Of("loads.holds-lithium", ("coat", coat), ("surface", surface)),
        Fume.Zinc => Message.Of("loads.holds-zinc", ("coat", coat), ("surface", surface)),
        Fume.Chrome => Message.Of("loads.holds-chrome", ("coat", coat), ("surface", surface)),
        Fume.Copper => Message.Of("loads.holds-copper", ("coat", coat), ("surface", surface)),
        _ => throw new UnreachableException($"{metal} has no sentence."),
    };
}
