using System.Text.Json;
using System.Xml.Linq;
using ConeService.Contract.Study;

namespace ConeService.Api.Features.Questions;

/// <summary>A question as an item of QTI: in 3.0 the elements of 2.1 are kebab-case with a prefix, and attributes kebab-case.</summary>
internal sealed class QtiItem(bool isThree)
{
    private readonly XNamespace qti = isThree
        ? "http://www.imsglobal.org/xsd/imsqtiasi_v3p0"
        : "http://www.imsglobal.org/xsd/imsqti_v2p1";

    public XElement Of(Question q) => Element("assessmentItem",
        Attribute("identifier", q.Id), Attribute("title", q.Topic), Attribute("adaptive", "false"), Attribute("timeDependent", "false"),
        Element("responseDeclaration",
            Attribute("identifier", "RESPONSE"), Attribute("cardinality", "single"), Attribute("baseType", "identifier"),
            Element("correctResponse", Element("value", q.Right))),
        Outcome("SCORE", "float"),
        Outcome("FEEDBACK", "identifier"),
        Element("itemBody", Element("choiceInteraction",
            Attribute("responseIdentifier", "RESPONSE"), Attribute("shuffle", "false"), Attribute("maxChoices", "1"),
            Element("prompt", q.Name),
            q.Choices.Select(c => Element("simpleChoice", Attribute("identifier", c.Letter), c.Text)))),
        Element("responseProcessing",
            Element("responseCondition",
                Element("responseIf",
                    Element("match", Variable(), Element("correct", Attribute("identifier", "RESPONSE"))),
                    Set("SCORE", "float", "1")),
                Element("responseElse", Set("SCORE", "float", "0"))),
            Set("FEEDBACK", "identifier", "WHY")),
        Element("modalFeedback",
            Attribute("outcomeIdentifier", "FEEDBACK"), Attribute("showHide", "show"), Attribute("identifier", "WHY"),
            isThree ? Element("contentBody", Why(q)) : Why(q)));

    private XElement Why(Question q) => new(qti + "p", $"{q.Why} Source: {string.Join(", ", q.Sources)}.");

    private XElement Outcome(string name, string type) => Element("outcomeDeclaration",
        Attribute("identifier", name), Attribute("cardinality", "single"), Attribute("baseType", type));

    private XElement Variable() => Element("variable", Attribute("identifier", "RESPONSE"));

    private XElement Set(string name, string type, string value) => Element("setOutcomeValue",
        Attribute("identifier", name), Element("baseValue", Attribute("baseType", type), value));

    private XElement Element(string name, params object[] content) =>
        new(qti + (isThree ? "qti-" + JsonNamingPolicy.KebabCaseLower.ConvertName(name) : name), content);

    private XAttribute Attribute(string name, string value) =>
        new(isThree ? JsonNamingPolicy.KebabCaseLower.ConvertName(name) : name, value);
}
