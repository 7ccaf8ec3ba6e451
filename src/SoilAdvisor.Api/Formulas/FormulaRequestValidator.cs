using FluentValidation;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.Formulas;

/// <summary>Inputs that are there. Their numbers are judged where their names are known.</summary>
internal sealed class FormulaRequestValidator : AbstractValidator<FormulaRequest>
{
    public FormulaRequestValidator()
    {
        RuleFor(r => r.Inputs).NotNull().Else("inputs-missing", "There are no inputs.", "Give a number for each symbol: {\"inputs\": {\"x\": 1}}.");
        RuleFor(r => r.Vary).SetValidator(new VariationValidator()!);
    }
}
