using System.IO.Compression;
using System.Xml.Linq;
using ConeService.Contract.Study;

namespace ConeService.Api.Features.Questions;

/// <summary>Questions as a content package of QTI 2.1 or 3.0 (1EdTech): a manifest and an item a question. The same questions give the
/// same bytes.</summary>
internal static class QtiPackage
{
    private static readonly DateTimeOffset Stamp = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    public static byte[] Write(QuestionList questions, bool isThree)
    {
        using var bytes = new MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            Add(zip, "imsmanifest.xml", Manifest(questions, isThree));
            foreach (var q in questions.Items) Add(zip, File(q), new QtiItem(isThree).Of(q));
        }

        return bytes.ToArray();
    }

    private static XElement Manifest(QuestionList questions, bool isThree)
    {
        XNamespace packaging = isThree
            ? "http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1"
            : "http://www.imsglobal.org/xsd/imscp_v1p1";
        return new(packaging + "manifest",
            new XAttribute("identifier", "cone-service-questions"),
            new XElement(packaging + "metadata",
                new XElement(packaging + "schema", isThree ? "QTI Package" : "QTIv2.1 Package"),
                new XElement(packaging + "schemaversion", isThree ? "3.0.0" : "1.0.0")),
            new XElement(packaging + "organizations"),
            new XElement(packaging + "resources", questions.Items.Select(q => new XElement(packaging + "resource",
                new XAttribute("identifier", "resource-" + q.Id),
                new XAttribute("type", isThree ? "imsqti_item_xmlv3p0" : "imsqti_item_xmlv2p1"),
                new XAttribute("href", File(q)),
                new XElement(packaging + "file", new XAttribute("href", File(q)))))));
    }

    private static string File(Question question) => $"items/{question.Id}.xml";

    private static void Add(ZipArchive zip, string name, XElement root)
    {
        var entry = zip.CreateEntry(name, CompressionLevel.NoCompression);
        entry.LastWriteTime = Stamp;
        using var stream = entry.Open();
        new XDocument(new XDeclaration("1.0", "utf-8", null), root).Save(stream);
    }
}
