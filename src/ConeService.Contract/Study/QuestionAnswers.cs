using ConeService.Contract.Answers;
using ConeService.Data;

namespace ConeService.Contract.Study;

/// <summary>Questions with one right answer, drawn from the data.</summary>
/// <param name="DatasetVersion">Version of the data package; the same version, topic, count and seed give the same questions.</param>
/// <param name="Topic">The topic asked for; null for all.</param>
/// <param name="Topics">Every topic there is.</param>
/// <param name="Seed">The seed that the questions were drawn by.</param>
/// <param name="Items">The questions.</param>
/// <param name="Assumed">What was not said and was assumed.</param>
public sealed record QuestionList(
    string DatasetVersion, string? Topic, IReadOnlyList<string> Topics, string Seed, IReadOnlyList<Question> Items,
    IReadOnlyList<Assumption> Assumed);

/// <summary>A question with one right answer among its choices.</summary>
/// <param name="Id">Id of the question: its topic and what it is about.</param>
/// <param name="Name">The question.</param>
/// <param name="Topic">Its topic.</param>
/// <param name="Choices">The choices, in the order in which they are shown.</param>
/// <param name="Right">Letter of the right choice.</param>
/// <param name="Why">Why it is right, and what the commonest mistake is.</param>
/// <param name="Sources">Ids of the sources of the right answer, most important first.</param>
/// <param name="Confidence">How far the right answer can be trusted; never from memory.</param>
/// <param name="Row">Address of the row of the data package that the answer is read from.</param>
public sealed record Question(
    string Id, string Name, string Topic, IReadOnlyList<Choice> Choices, string Right, string Why, IReadOnlyList<string> Sources,
    Confidence Confidence, Address Row);

/// <summary>A choice.</summary>
/// <param name="Letter">Its letter, from A.</param>
/// <param name="Text">What it says.</param>
public sealed record Choice(string Letter, string Text);
