using ConeService.Data;

namespace ConeService.Contract.Datasets;

/// <summary>A data package that lies where the one in use came from and is another; the one in use stays.</summary>
/// <param name="Standing">pending: it is still being written, or not sealed anew; refused: it is not valid.</param>
/// <param name="Since">When it was first seen.</param>
/// <param name="Reason">Why it is not used, English: file, line, field and rule of the first faults.</param>
public sealed record PackageNotUsed(PackageStanding Standing, DateTimeOffset Since, string Reason);
