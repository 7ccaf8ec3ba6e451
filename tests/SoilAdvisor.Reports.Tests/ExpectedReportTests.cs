namespace SoilAdvisor.Reports.Tests;

public sealed class ExpectedReportTests
{
    [Fact]
    public void The_invented_plan_reads_in_Markdown_as_reviewed() =>
        ExpectedFile.Holds("invented-plan.md", MarkdownReport.Write(InventedPlan.Plan(), InventedPlan.Bibliography));

    [Fact]
    public void The_invented_plan_reads_in_metric_units_as_reviewed() =>
        ExpectedFile.Holds("invented-plan-metric.md", MarkdownReport.Write(InventedPlan.Plan(), InventedPlan.Bibliography, ReportUnits.Metric));

    [Fact]
    public void The_invented_plan_reads_in_HTML_as_reviewed() =>
        ExpectedFile.Holds("invented-plan.html", HtmlReport.Write(InventedPlan.Plan(), InventedPlan.Bibliography));

    [Fact]
    public void The_invented_plan_reads_as_rows_as_reviewed() =>
        ExpectedFile.Holds("invented-plan.csv", CsvReport.Write(InventedPlan.Plan(), InventedPlan.Bibliography));
}
