using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing.Loads.Rules;

/// <summary>
/// What a caller says that a coat holds, and what each metal means for food, for who breathes its fume, and for neighbours.
/// Lead has a rule of its own in <see cref="FoodRule"/>; tin means nothing but to its neighbours.
/// </summary>
internal sealed class MetalRule : IPieceRule
{
    // Of these enough comes out of a glaze that is not proven to weigh where food touches; metals-in-coats.
    private static readonly Materials.EnumSet<Fume> ComingOut =
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
                if (Means(metal, item.Coat.NameFirst) is not { } message) continue;
                var weighs = touches && ComingOut.Has(metal);
                judgement.Find(weighs ? ReasonCode.NotForFood : ReasonCode.MetalInCoat, weighs ? ReasonSeverity.Review : ReasonSeverity.Note)
                    ?.Because(LoadRuleIds.Metals, item.Coat, message, touches ? Message.Of("loads.test-before-food") : null);
            }
        }
    }

    private static Message? Means(Fume metal, object coat) => metal switch
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
        _ => null,
    };
}
