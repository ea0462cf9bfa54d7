using ConeService.Contract.Answers;
using ConeService.Contract.Conversions;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Tests.Support;

namespace ConeService.Firing.Tests.Texts;

/// <summary>A second language is rows of the table messages and nothing else: what is wrong with a cone, said in German.</summary>
public class GermanTests
{
    private static readonly FiringReference Firing = FiringReference.Open(Reference.Dataset);

    public static TheoryData<string, string, string?, string, string, string> Refusals => new()
    {
        {
            "0", "60C/h", null, "cone-zero",
            "Einen Kegel 0 gibt es nicht: die Reihe läuft … 02, 01, 1, 2 … .",
            "Zwischen 01 und 1 liegt kein Kegel; die beiden sind Nachbarn."
        },
        {
            "6.5", "60C/h", null, "cone-unknown",
            "Einen Kegel 6.5 gibt es nicht.",
            ""
        },
        {
            "3.5", "60C/h", null, "cone-unknown",
            "Einen Kegel 3.5 gibt es nicht.",
            "Kegel 03.5 gibt es."
        },
        {
            "-6", "60C/h", null, "cone-unreadable",
            "Ein Kegel hat kein Minuszeichen: die niedrigen Kegel werden mit führender Null geschrieben.",
            "Gemeint war wohl Kegel 06; Kegel 6 ist ein anderer, weit heißerer Kegel."
        },
        {
            "6", "60C/h", "smal", "chart-unknown",
            "Eine Kegeltabelle „smal“ gibt es nicht.",
            "Wahrscheinlich small; alle Kegeltabellen stehen unter /v1/charts."
        },
        {
            "6", "60", null, "rate-unit-missing",
            "Der Aufheizrate 60 fehlt die Einheit.",
            "Schreiben Sie 60C/h oder 60F/h: zwischen beiden liegt der Faktor 1,8."
        },
        {
            "6", "60C", null, "rate-unit-missing",
            "Bei der Aufheizrate 60C fehlt die Angabe, je welcher Zeit sie gilt.",
            "Schreiben Sie 60C/h für je Stunde."
        },
        {
            "6", "0C/h", null, "rate-out-of-range",
            "Für die Aufheizrate 0C/h lässt sich kein Kegel berechnen.",
            "Eine Haltezeit hat keine Aufheizrate: der Endpunkt eines Kegels verlangt die Rate der letzten 100 °C davor."
        },
    };

    [Theory]
    [MemberData(nameof(Refusals))]
    public async Task A_refusal_is_said_in_German(string cone, string rate, string? chart, string code, string message, string mistake)
    {
        var finding = Assert.Single(Assert.Throws<RefusedException>(() => Firing.Cones.EndPoint(cone, rate, chart)).Findings);
        Assert.Equal(code, finding.Code);
        Assert.Equal(message, await InGerman(() => finding.Message.ToString()));
        Assert.Equal(mistake, await InGerman(() => finding.LikelyMistake?.ToString() ?? ""));
    }

    [Fact]
    public async Task A_cone_sent_as_a_number_is_refused_in_German()
    {
        var line = new ConversionLine(Cone: new("6", SentKind.Number));
        var finding = Assert.Single(Firing.Cones.Convert(new([line])).Lines[0].Problems);
        Assert.Equal("cone-as-number", finding.Code);
        Assert.Equal(
            "Ein Kegel ist Text: „06“ und „6“ sind zwei Kegel, die mehr als 200 °C auseinanderliegen, "
            + "und als Zahlen sind sie gleich.",
            await InGerman(() => finding.Message.ToString()));
        Assert.Equal(
            "Kegel 6 oder Kegel 06? Setzen Sie den gemeinten in Anführungszeichen.",
            await InGerman(() => finding.LikelyMistake!.ToString()));
    }

    [Fact]
    public async Task A_temperature_without_its_unit_is_refused_in_German()
    {
        var finding = Assert.Single(Assert.Throws<RefusedException>(() => Firing.Cones.Reading("2232")).Findings);
        Assert.Equal("Der Temperatur 2232 fehlt die Einheit.", await InGerman(() => finding.Message.ToString()));
        Assert.Equal("Wahrscheinlich °F: 2232F sind 1222 °C.", await InGerman(() => finding.LikelyMistake!.ToString()));
    }

    // A branch of the sentence, a number with its format, and a range.
    [Fact]
    public async Task Branches_and_formats_work_in_German()
    {
        var finding = Assert.Single(Assert.Throws<RefusedException>(() => Firing.Cones.Reading("500C", "60C/h")).Findings);
        Assert.Equal(
            "500C liegt außerhalb der Kegeltabelle witness-self-supporting bei 60C/h.", await InGerman(() => finding.Message.ToString()));
        // Source: the chart prints 586 °C for 022 and 1365 °C for 14 at 60 °C/h.
        Assert.Equal("586C (Kegel 022) bis 1365C (Kegel 14) bei 60C/h", await InGerman(() => finding.Allowed[0].ToString()));
        var mixUp = Firing.Cones.Describe(Firing.Cones.Read("06")).MixUp!.Message;
        Assert.StartsWith(
            "Kegel 6 fällt bei einer um 224 °C (403 °F) höheren Temperatur als Kegel 06.", await InGerman(() => mixUp.ToString()),
            StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_has_no_German_yet_is_said_in_English() => Assert.Equal(
        "A log is what was; only a programme can still be changed.",
        await InGerman(() => Message.Of("heat-work.log-is-past").ToString()));

    // Names of kilns and kinds of firing, and what tables say of a material, are English texts of rows: German sentences choose words of
    // their own, by the kind, or do without.
    private static readonly string[] TextsOfRows =
        ["overfired", "underfired", "effect", "shelf", "firing", "kiln", "heat", "first", "coat"];

    [Fact]
    public void Every_translated_row_has_the_parameters_of_the_English_one()
    {
        var english = Reference.Dataset.Messages.Where(m => m.Language == MessageBook.English && m.Audience == MessageAudience.Anyone)
            .ToDictionary(m => m.Code, m => MessageTemplate.Parse(m.Text).Parameters);
        var translated = Reference.Dataset.Messages.Where(m => m.Language != MessageBook.English).ToList();
        Assert.InRange(translated.Count(m => m.Language == "de"), 20, english.Count);
        Assert.All(translated, m =>
        {
            var named = MessageTemplate.Parse(m.Text).Parameters;
            Assert.Empty(named.Except(english[m.Code]));
            Assert.Empty(english[m.Code].Except(named).Except(TextsOfRows));
        });
    }

    [Fact]
    public void The_load_check_speaks_German_throughout()
    {
        var german = Reference.Dataset.Messages.Where(m => m.Language == "de").Select(m => m.Code).ToHashSet();
        string[] areas = ["loads", "materials", "members"];
        Assert.Empty(Reference.Dataset.Messages.Select(m => m.Code).Where(c => areas.Contains(c.Split('.')[0])).Distinct().Except(german));
    }

    [Fact]
    public async Task A_load_is_judged_in_German()
    {
        var answer = Firing.Loads.Check(Tests.Loads.Loads.Load(
            Tests.Loads.Loads.Electric, Tests.Loads.Loads.Firing("glaze", "6", "oxidation"),
            Tests.Loads.Loads.Piece("a", "high-fire-porcelain", "celadon")));
        var reasons = answer.Pieces[0].Reasons;
        Task<string> Said(Message message) => InGerman(() => message.ToString());

        Assert.Equal(
            "Celadon schmilzt bei Kegel 6 nicht: gebraucht wird Kegel 8 bis 12, mindestens 2 ganze Kegel mehr.",
            await Said(reasons.First(r => r.Code == ReasonCode.GlazeUnderfired).Message));
        Assert.Equal(
            "Buchen Sie es in einen Glasurbrand auf Kegel 10 in Reduktion, "
            + "in einem anderen Ofen, der Reduktion hält: das passt zu Masse und Überzügen zusammen.",
            await Said(answer.Pieces[0].Instead!));
        Assert.StartsWith(
            "Überzug unter seinem Bereich: celadon, Kegel 8 bis 12; Brand auf Kegel 6, 2 ganze Kegel darunter. Regel ",
            await Said(reasons.First(r => r.Code == ReasonCode.GlazeUnderfired).Texts.Technician), StringComparison.Ordinal);
        Assert.StartsWith("Celadon ist für Reduktion gemacht; dieser Brand ist in Oxidation.",
            await Said(reasons.First(r => r.Code == ReasonCode.AtmosphereMismatch).Message), StringComparison.Ordinal);
    }

    // Speech flows with the request; a task of its own keeps German from flowing into other tests.
    private static Task<string> InGerman(Func<string> say) => Task.Run(() =>
    {
        Speech.Use(new(MessageBook.For(Reference.Dataset), "de"));
        return say();
    });
}
