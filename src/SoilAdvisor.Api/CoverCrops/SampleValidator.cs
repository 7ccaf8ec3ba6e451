using FluentValidation;
using SoilAdvisor.Api.Beds;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.CoverCrops;

/// <summary>A cut with its mass and frame.</summary>
internal sealed class SampleValidator : AbstractValidator<WrittenSample>
{
    public SampleValidator()
    {
        RuleFor(s => s.Dried).NotNull().Else("sample-incomplete", "The sample has no dried mass.", "Give dried, for example {\"value\": 120, \"unit\": \"g\"}.");
        RuleFor(s => s.Dried).SetValidator(new QuantityValidator("The dried mass")!);
        RuleFor(s => s.Frame).NotNull().Else("sample-incomplete", "The sample has no frame.", "Give frame, for example {\"value\": 4, \"unit\": \"sq ft\"}.");
        RuleFor(s => s.Frame).SetValidator(new QuantityValidator("The frame")!);
    }
}
