using ConeService.Contract.Answers;
using FluentValidation;
using FluentValidation.Results;

namespace ConeService.Api.Http;

/// <summary>A bound request body that holds a request of the contract.</summary>
/// <typeparam name="T">The request.</typeparam>
internal interface IRequestBody<out T>
{
    /// <summary>The request.</summary>
    T Value { get; }
}

/// <summary>What a validation rule knows beside its message; put into a rule with WithState.</summary>
/// <param name="Allowed">What would be accepted.</param>
/// <param name="LikelyMistake">What the caller probably meant.</param>
internal sealed record RuleHelp(IReadOnlyList<string> Allowed, string? LikelyMistake = null);

/// <summary>Checks a request as a whole with its FluentValidation validator before the handler runs.</summary>
internal static class RequestValidation
{
    /// <summary>Adds the check.</summary>
    public static RouteHandlerBuilder Validated<T>(this RouteHandlerBuilder builder) =>
        builder.AddEndpointFilter(async (context, next) =>
        {
            var request = context.Arguments.OfType<IRequestBody<T>>().Single().Value;
            var validator = context.HttpContext.RequestServices.GetRequiredService<IValidator<T>>();
            var result = await validator.ValidateAsync(request, context.HttpContext.RequestAborted);
            return result.IsValid ? await next(context) : throw new RefusedException([.. result.Errors.Select(ToFinding)]);
        });

    // A rule's error code is the code of the problem, its property path becomes a JSON pointer.
    private static Finding ToFinding(ValidationFailure failure)
    {
        var help = failure.CustomState as RuleHelp ?? new([]);
        var pointer = string.Concat(failure.PropertyName.Split('.').Select(part => "/" + char.ToLowerInvariant(part[0]) + part[1..].Replace("[", "/", StringComparison.Ordinal).Replace("]", "", StringComparison.Ordinal)));
        return new(failure.ErrorCode, pointer, Text(failure.AttemptedValue), failure.ErrorMessage, help.Allowed, help.LikelyMistake);
    }

    // Lists and objects are not repeated: they can be long.
    private static string? Text(object? attempted) => attempted as string ?? (attempted as IFormattable)?.ToString(null, System.Globalization.CultureInfo.InvariantCulture);
}
