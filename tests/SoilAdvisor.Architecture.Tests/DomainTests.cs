using System.Reflection;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Architecture.Tests;

public sealed class DomainTests
{
    // Numbers enter and leave the science through quantity types; these types are the doors.
    private static readonly string[] Doors =
    [
        "SoilAdvisor.Agronomy.Quantities", "SoilAdvisor.Agronomy.Working",
    ];

    [Fact]
    public void Every_formula_names_its_source_its_symbols_and_why_it_is_unchecked_if_it_is()
    {
        foreach (var formula in AllFormulas())
        {
            Assert.Matches("^[a-z0-9]+(-[a-z0-9]+)*$", formula.Id);
            Assert.NotEmpty(formula.Title);
            Assert.NotEmpty(formula.Shown);
            Assert.NotEmpty(formula.Source.SourceId);
            Assert.NotEmpty(formula.Inputs);
            Assert.All(formula.Inputs, s => Assert.NotEmpty(s.Meaning));
        }
    }

    [Fact]
    public void Every_formula_is_in_the_catalogue_once()
    {
        var defined = AllFormulas().Select(f => f.Id).Order(StringComparer.Ordinal).ToList();

        Assert.Equal(defined.Distinct(), defined);
        Assert.Equal(defined, Formulas.All.Select(f => f.Id).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void No_public_method_of_the_science_takes_a_naked_floating_point_number()
    {
        var naked = Rooms.Agronomy.GetExportedTypes()
            .Where(t => !Doors.Contains(t.Namespace))
            .SelectMany(t => t.GetMethods(BindingFlags.Public | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly)
                .Where(m => !m.IsSpecialName && m.GetParameters().Any(p => p.ParameterType == typeof(double) || p.ParameterType == typeof(float)))
                // A quantity's own factory names the unit it takes: FromPoundsPerAcre(double).
                .Where(m => !m.Name.StartsWith("From", StringComparison.Ordinal))
                .Select(m => $"{t.Name}.{m.Name}"));

        Assert.Empty(naked);
    }

    [Fact]
    public void No_public_type_of_the_science_can_be_changed_after_it_was_made()
    {
        var changeable = Rooms.Agronomy.GetExportedTypes()
            .SelectMany(t => t.GetProperties(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly)
                .Where(p => p.SetMethod is { IsPublic: true } set && !set.ReturnParameter.GetRequiredCustomModifiers().Any(m => m.Name == "IsExternalInit"))
                .Select(p => $"{t.Name}.{p.Name}"));

        Assert.Empty(changeable);
    }

    private static IEnumerable<IFormula> AllFormulas() =>
        Rooms.Agronomy.GetTypes()
            .SelectMany(t => t.GetProperties(BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Static))
            .Where(p => typeof(IFormula).IsAssignableFrom(p.PropertyType))
            .Select(p => (IFormula)p.GetValue(null)!);
}
