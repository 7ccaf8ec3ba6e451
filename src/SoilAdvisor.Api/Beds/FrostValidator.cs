using FluentValidation;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.Beds;

/// <summary>Frost dates that are dates.</summary>
internal sealed class FrostValidator : AbstractValidator<WrittenFrost>
{
    public FrostValidator()
    {
        RuleFor(f => f.LastSpring).IsOptionalDate("The last frost in spring");
        RuleFor(f => f.FirstFall).IsOptionalDate("The first frost in fall");
    }
}
