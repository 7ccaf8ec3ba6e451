namespace SoilAdvisor.Agronomy.Certification;

/// <summary>Temperature log of one compost pile. Between its first and its last day every day counts; a day without a reading is missing.</summary>
/// <param name="Days">Days with readings, in any order; readings of one day may stand in several entries.</param>
/// <param name="Turnings">Days on which the pile was turned; empty when it never was, null when nobody wrote it down.</param>
public sealed record TemperatureLog(IReadOnlyList<LoggedDay> Days, IReadOnlyList<DateOnly>? Turnings);
