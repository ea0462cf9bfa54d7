using ConeService.Contract.Loads;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing.Loads;

/// <summary>The different reasons of a load, each once, by number.</summary>
internal sealed class ReasonTable
{
    private readonly Dictionary<(ReasonCode Code, ReasonSeverity Severity, string Rule, string Within, Message Message), int> numbers = [];
    private readonly List<NumberedReason> reasons = [];

    /// <summary>The reasons, from number 1.</summary>
    public IReadOnlyList<NumberedReason> Reasons => reasons;

    /// <summary>The numbers of the reasons of a class of pieces.</summary>
    public IReadOnlyList<int> NumbersOf(PieceClass pieces) => [.. pieces.Reasons.Select(r => Number(pieces.First, r))];

    private int Number(Piece piece, Reason reason)
    {
        var within = reason.Pointer[piece.At.Length..];
        var key = (reason.Code, reason.Severity, reason.Rule, within, reason.Message);
        if (numbers.TryGetValue(key, out var number)) return number;
        reasons.Add(new(reasons.Count + 1, reason with { Pointer = within }));
        return numbers[key] = reasons.Count;
    }
}
