namespace SoilAdvisor.Agronomy.SoilTests;

/// <summary>One line of a laboratory report, as received. Analyte, method, unit and amount travel together.</summary>
/// <param name="Analyte">What was measured.</param>
/// <param name="Amount">What was reported.</param>
/// <param name="Unit">In which unit.</param>
/// <param name="Method">By which method.</param>
/// <param name="Where">Line, column or JSON pointer of the report, kept for good.</param>
public sealed record Reading(Analyte Analyte, Amount Amount, ReportingUnit Unit, Method Method, string Where);
