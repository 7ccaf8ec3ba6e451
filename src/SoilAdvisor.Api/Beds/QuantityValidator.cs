using FluentValidation;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.SoilTests;

namespace SoilAdvisor.Api.Beds;

/// <summary>A measure that is a number of the right sign and of this world. Its unit is the reader's affair.</summary>
internal sealed class QuantityValidator : AbstractValidator<WrittenQuantity>
{
    private const decimal Most = 10_000_000;

    public QuantityValidator(string what, bool zeroAllowed = false)
    {
        var number = RuleFor(q => q.Value).IsNumber(what);
        _ = (zeroAllowed ? number.IsNotNegative(what) : number.IsAboveZero(what)).IsAtMost(Most, what, "in any unit");
        RuleFor(q => q.Unit).IsText("The unit of " + char.ToLowerInvariant(what[0]) + what[1..], "unit-missing", "Write the unit beside the value.");
    }
}
