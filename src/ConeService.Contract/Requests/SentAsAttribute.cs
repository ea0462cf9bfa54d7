namespace ConeService.Contract.Requests;

/// <summary>In which form a member that is kept as it was sent is meant to come; without a range and without this, as text.</summary>
/// <param name="form">The form.</param>
[AttributeUsage(AttributeTargets.Property)]
public sealed class SentAsAttribute(SentForm form) : Attribute
{
    /// <summary>The form.</summary>
    public SentForm Form { get; } = form;
}

/// <summary>Forms in which a member comes.</summary>
public enum SentForm
{
    /// <summary>A number.</summary>
    Number,

    /// <summary>Text with its own unit, or a bare number.</summary>
    Quantity,
}
