using FluentValidation;

namespace SoilAdvisor.Api.Tests.Contract;

public sealed class ValidatorTests
{
    public static TheoryData<string> Validators => [.. AssemblyScanner.FindValidatorsInAssembly(typeof(SoilAdvisor.Api.Host).Assembly, includeInternalTypes: true)
        .Select(v => v.ValidatorType).Where(t => t.GetConstructor(Type.EmptyTypes) is not null).Select(t => t.FullName!).Order(StringComparer.Ordinal)];

    [Theory, MemberData(nameof(Validators))]
    public void Each_rule_has_a_permanent_code_in_lower_case_words(string validator)
    {
        var type = typeof(SoilAdvisor.Api.Host).Assembly.GetType(validator)!;
        var descriptor = ((IValidator)Activator.CreateInstance(type)!).CreateDescriptor();

        // A rule that hands its member to another validator has the codes of that validator.
        var components = descriptor.Rules.SelectMany(r => r.Components).Where(c => c.Validator is not FluentValidation.Validators.IChildValidatorAdaptor).ToList();
        Assert.All(components, c => Assert.Matches("^[a-z0-9]+(-[a-z0-9]+)*$", c.ErrorCode ?? "missing code of " + c.Validator.Name));
    }

    [Fact]
    public void There_are_validators() => Assert.True(Validators.Count > 15);
}
