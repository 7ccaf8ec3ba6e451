using FluentValidation;
using SoilAdvisor.Api.Beds;

namespace SoilAdvisor.Api.FieldWork;

/// <summary>Measures that can be read.</summary>
internal sealed class MeasuresValidator : AbstractValidator<WrittenMeasures>
{
    public MeasuresValidator()
    {
        RuleFor(m => m.Bucket).SetValidator(new QuantityValidator("The bucket")!);
        RuleFor(m => m.Scoop).SetValidator(new QuantityValidator("The scoop")!);
        RuleFor(m => m.ScaleStep).SetValidator(new QuantityValidator("The step of the scale")!);
        RuleFor(m => m.Strip).SetValidator(new QuantityValidator("The strip")!);
        RuleFor(m => m.Swath).SetValidator(new QuantityValidator("The swath")!);
    }
}
