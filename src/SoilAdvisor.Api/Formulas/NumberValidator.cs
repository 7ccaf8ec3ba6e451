using FluentValidation;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.Formulas;

/// <summary>One number for a symbol.</summary>
internal sealed class NumberValidator : AbstractValidator<NumberValidator.Number>
{
    public NumberValidator(string what) => RuleFor(n => n.Written).IsNumber(what);

    /// <summary>The number as written.</summary>
    internal sealed record Number(WrittenNumber? Written);
}
