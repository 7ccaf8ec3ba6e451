global using System.Globalization;
global using SoilAdvisor.Agronomy.Working;
