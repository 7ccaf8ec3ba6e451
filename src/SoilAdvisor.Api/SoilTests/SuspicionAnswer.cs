using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.SoilTests;

/// <summary>A likely mix-up in a soil test, said before its numbers are used. Everything is computed all the same.</summary>
/// <param name="Pointer">The reading in doubt, in the request (in the answer's soilTests for a lab file).</param>
/// <param name="Also">Other readings it rests on.</param>
/// <param name="Code">Permanent kebab-case code.</param>
/// <param name="Message">What was found, against which limit.</param>
/// <param name="Suggestion">What to look at.</param>
/// <param name="By">Where the limit stands.</param>
internal sealed record SuspicionAnswer(string Pointer, IReadOnlyList<string>? Also, string Code, string Message, string Suggestion, CitedAs By) : Sourced(By);
