using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.Texts;

namespace ConeService.Contract.Conversions;

/// <summary>The lines answered, in the order sent.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Answered">Number of lines with a result.</param>
/// <param name="Refused">Number of lines with problems instead.</param>
/// <param name="Lines">The lines.</param>
/// <param name="Warnings">What the sender of a CSV must look at; empty for JSON, which keeps text apart from numbers.</param>
public sealed record ConversionAnswer(
    string DatasetVersion, int Answered, int Refused, IReadOnlyList<ConversionResult> Lines, IReadOnlyList<ConversionWarning> Warnings);

/// <summary>Something about an upload that its sender must know.</summary>
/// <param name="Code">Stable kebab-case name of the kind of warning.</param>
/// <param name="Message">What was found, and what to do about it.</param>
/// <param name="Lines">The lines of the file that it concerns, counted from 1, the header being line 1; empty for the whole.</param>
public sealed record ConversionWarning(string Code, Message Message, IReadOnlyList<long> Lines);

/// <summary>One line answered.</summary>
/// <param name="Line">Which of the lines answered it is, from 1; in a CSV neither the header nor empty lines are counted, so that it is
/// not the line of the file.</param>
/// <param name="EndPoint">The end point, when a cone was sent.</param>
/// <param name="Reading">The cone reached, when a temperature was sent.</param>
/// <param name="Problems">What is wrong with the line; empty when it was answered. Of all lines together, beyond the first of each, the
/// first 50.</param>
/// <param name="FileLine">In a CSV the line of the file in which it begins, counted as problems and warnings count: from 1, the header
/// included, empty lines too. Null for JSON, which has no lines.</param>
/// <param name="MoreProblems">How much more is wrong with it than problems lists.</param>
public sealed record ConversionResult(
    int Line, EndPoint? EndPoint, ConeReading? Reading, IReadOnlyList<Finding> Problems, long? FileLine, int MoreProblems = 0);
