using ConeService.Api.Features.Cards;
using ConeService.Api.Features.Figures;
using ConeService.Firing;

namespace ConeService.Api.Features.Posters;

/// <summary>A hand-out for a class on cones, two sides: what they are and how they are read; which are usual, and what to
/// note.</summary>
internal static class ConeHandout
{
    // Told in this order, by the ids of the glossary.
    private static readonly string[] Told = ["cone", "witness-cone", "heat-work", "cone-pack", "end-point", "soaking"];

    // Cones that most kinds of firing go to.
    private const int Usual = 10;

    public static Poster Of(FiringReference reference)
    {
        var terms = reference.Study.Terms().Items.ToDictionary(t => t.Id);
        var told = Told.Where(terms.ContainsKey).Select(i => terms[i]).ToList();
        var front = new PosterSheet().List("The words", told.Select(t => $"{t.Name}: {t.Meaning}"))
            .Heading("Reading a cone").Figure("bending-cone", BendingCone.Alt, 364.0 / 640)
            .Say("Eyes: look into a hot kiln only through infrared-filtering glasses, and not longer than it takes.", "warn");
        var chart = reference.Cones.Chart(reference.Cones.DefaultChart).Chart;
        var (points, sources) = ChartCard.Points(reference.Cones, chart, "60C/h");
        var usual = reference.Dataset.UsualFirings.CountBy(u => u.Cone).OrderByDescending(c => c.Value).Take(Usual)
            .Select(c => c.Key).ToHashSet();
        var back = new PosterSheet().Heading("06 is not 6")
            .Say("Cones with a zero in front count backwards: 06 is cooler than 05, and hundreds of degrees cooler than 6. Say the zero "
                + "aloud and write it down.")
            .Table($"Cones that studios fire most: {chart.Name}, 60 °C/h (108 °F/h)", ["Cone", "°C", "°F"],
                [.. points.Where(p => usual.Contains(p.Cone)).Select(p =>
                    (string[])[p.Cone, CardWords.Whole(p.Celsius), CardWords.Whole(p.Fahrenheit)])], style: "figures")
            .Heading("The faster, the hotter")
            .Figure("cone-6", "Temperature at which cone 6 goes down, against the heating rate", 380.0 / 640)
            .Heading("Your firing")
            .Blanks("Cone below, at o'clock:", "Cone wanted, at o'clock:", "Cone above, at o'clock:", "Meter at the end:",
                "Where in the kiln:", "Name, date:");
        return new("cones", "Pyrometric cones", [front, back], [.. told.SelectMany(t => t.Sources).Concat(sources).Distinct()]);
    }
}
