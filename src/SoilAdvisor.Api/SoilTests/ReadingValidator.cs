using FluentValidation;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.SoilTests;

/// <summary>A reading that can be read: which analyte, a number, a comparator that exists. What the words mean is the reader's affair.</summary>
internal sealed class ReadingValidator : AbstractValidator<WrittenReading>
{
    public ReadingValidator()
    {
        RuleFor(r => r.Analyte).IsText("The analyte", "analyte-missing", "Say what was measured, for example P.");
        RuleFor(r => r.Value).IsNumber("The reading");
        RuleFor(r => r.Comparator)
            .Must(c => c is null or "<" or "<=" or ">" or ">=")
            .Else("unknown-comparator", (_, c) => $"\"{Rules.Clip(c)}\" is not a comparator.", "Use <, <=, > or >=, or leave it out for a plain number.");
        RuleFor(r => r.Unit).IsOptionalText("The unit");
        RuleFor(r => r.Extractant).IsOptionalText("The extractant");
        RuleFor(r => r.Detection).IsOptionalText("The detection");
        RuleFor(r => r.Basis).IsOptionalText("The basis");
        RuleFor(r => r.Method).IsOptionalText("The method");
    }
}
