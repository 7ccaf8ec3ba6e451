using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Working;

namespace SoilAdvisor.Api.Mistakes;

/// <summary>Both results and how far they lie apart.</summary>
/// <param name="Mistake">Id of the mistake.</param>
/// <param name="Title">The mistake in a few words.</param>
/// <param name="WhatGoesWrong">What goes wrong and what comes of it.</param>
/// <param name="HowToNotice">How it can be noticed.</param>
/// <param name="Right">The right result.</param>
/// <param name="Mistaken">The result with the mistake.</param>
/// <param name="Difference">Mistaken less right, in the same unit.</param>
/// <param name="DifferencePercent">The same in percent of the right result; left out where that is zero.</param>
/// <param name="Working">The two lines.</param>
/// <param name="Assumptions">None.</param>
/// <param name="Sources">Sources used.</param>
/// <param name="Versions">Versions.</param>
internal sealed record MistakeAnswer(
    string Mistake,
    string Title,
    string WhatGoesWrong,
    string HowToNotice,
    Quantity Right,
    Quantity Mistaken,
    Quantity Difference,
    decimal? DifferencePercent,
    IReadOnlyList<WorkingLineAnswer> Working,
    IReadOnlyList<AssumptionAnswer> Assumptions,
    IReadOnlyList<SourceAnswer> Sources,
    Versions Versions);
