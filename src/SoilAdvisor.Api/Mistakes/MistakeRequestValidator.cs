using FluentValidation;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.Mistakes;

/// <summary>Inputs that are there. Their numbers are judged where their names are known.</summary>
internal sealed class MistakeRequestValidator : AbstractValidator<MistakeRequest>
{
    public MistakeRequestValidator() =>
        RuleFor(r => r.Inputs).NotNull().Else("inputs-missing", "There are no inputs.", "Give a number for each symbol: {\"inputs\": {\"x\": 1}}.");
}
