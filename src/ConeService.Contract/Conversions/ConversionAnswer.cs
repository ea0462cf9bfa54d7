using ConeService.Contract.Answers;
using ConeService.Contract.Cones;

namespace ConeService.Contract.Conversions;

/// <summary>The lines answered, in the order sent.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Answered">Number of lines with a result.</param>
/// <param name="Refused">Number of lines with problems instead.</param>
/// <param name="Lines">The lines.</param>
public sealed record ConversionAnswer(string DatasetVersion, int Answered, int Refused, IReadOnlyList<ConversionResult> Lines);

/// <summary>One line answered.</summary>
/// <param name="Line">Number of the line, from 1; in a CSV the header is not counted.</param>
/// <param name="EndPoint">The end point, when a cone was sent.</param>
/// <param name="Reading">The cone reached, when a temperature was sent.</param>
/// <param name="Problems">What is wrong with the line; empty when it was answered.</param>
public sealed record ConversionResult(int Line, EndPoint? EndPoint, ConeReading? Reading, IReadOnlyList<Finding> Problems);
