using FluentValidation;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.SoilTests;

namespace SoilAdvisor.Api.LabFiles;

/// <summary>A list of soil tests that can be read.</summary>
internal sealed class LabFileRequestValidator : AbstractValidator<LabFileRequest>
{
    public LabFileRequestValidator()
    {
        RuleFor(r => r.SoilTests)
            .HasSome("soilTests", "soil-test-missing", "Send at least one soil test.")
            .HasAtMost(Limits.SoilTests, "soil tests");
        RuleForEach(r => r.SoilTests).SetValidator(new SoilTestValidator());
    }
}
