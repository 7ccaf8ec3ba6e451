namespace SoilAdvisor.ReferenceTables.Reading;

/// <summary>What every document says of where its numbers come from and when they were written down.</summary>
internal interface ITableHead
{
    string Title { get; }

    SourceReference Source { get; }

    string Evidence { get; }

    InForce InForce { get; }

    string Transcribed { get; }

    string TranscribedFrom { get; }

    string? CheckedAgainstSource { get; }

    string? Notes { get; }
}
