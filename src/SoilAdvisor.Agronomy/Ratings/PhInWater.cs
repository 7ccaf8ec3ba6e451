using SoilAdvisor.Agronomy.SoilTests;

namespace SoilAdvisor.Agronomy.Ratings;

/// <summary>Whether a pH reading counts as pH in water. Salt solutions read lower; a laboratory that names no procedure is taken at its word.</summary>
internal static class PhInWater
{
    public static bool Is(Method method) => method.Procedure is null or Procedure.PhWater11 or Procedure.PhWater12;
}
