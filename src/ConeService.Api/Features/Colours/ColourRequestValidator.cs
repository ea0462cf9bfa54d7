using ConeService.Api.Http;
using ConeService.Contract.Colours;
using ConeService.Firing.Colour;
using FluentValidation;

namespace ConeService.Api.Features.Colours;

/// <summary>What must hold for a recipe as a whole; its entries are judged one by one later.</summary>
internal sealed class ColourRequestValidator : AbstractValidator<ColourRequest>
{
    /// <summary>Most entries of each list: no glaze holds more, and each costs a look through all notes.</summary>
    private const int Most = 20;

    public ColourRequestValidator()
    {
        RuleFor(r => r.Colorants).NotEmpty()
            .WithErrorCode("empty-request")
            .WithMessage("The recipe holds no colorants.")
            .WithState(_ => new RuleHelp([$"1 to {Most} colorants"]));
        RuleFor(r => r.Colorants).Must(c => c is null || c.Count <= Most)
            .WithErrorCode("too-many-ingredients")
            .WithMessage(r => $"The recipe holds {r.Colorants?.Count} colorants.")
            .WithState(_ => new RuleHelp([$"1 to {Most} colorants"]));
        RuleFor(r => r.Additives).Must(a => a is null || a.Count <= Most)
            .WithErrorCode("too-many-ingredients")
            .WithMessage(r => $"The recipe holds {r.Additives?.Count} additives.")
            .WithState(_ => new RuleHelp([$"0 to {Most} additives"]));
    }
}
