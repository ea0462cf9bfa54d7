using System.Globalization;
using ConeService.Api.Http;
using ConeService.Contract.Study;
using CsvHelper;

namespace ConeService.Api.Features.Questions;

/// <summary>Questions as CSV, one a line, with a column for each choice.</summary>
internal static class QuestionCsv
{
    private static readonly string[] Columns =
        ["id", "topic", "question", "a", "b", "c", "d", "right", "why", "sources", "confidence", "row", "dataset_version"];

    public static string Write(QuestionList questions)
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        using var csv = CsvWriter.Create(text, Csv.Writing, leaveOpen: true);
        csv.WriteRecord(Columns);
        foreach (var q in questions.Items)
        {
            csv.WriteRecord([
                q.Id, q.Topic, q.Name, .. q.Choices.Select(c => c.Text), q.Right, q.Why, string.Join("; ", q.Sources),
                Data.EnumWords.Word(q.Confidence), q.Row.ToString(), questions.DatasetVersion]);
        }

        csv.Flush();
        return text.ToString();
    }
}
