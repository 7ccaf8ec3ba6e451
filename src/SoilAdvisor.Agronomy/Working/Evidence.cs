namespace SoilAdvisor.Agronomy.Working;

/// <summary>How a value came to us. It travels with the value to the user. Default is <see cref="FromMemory"/>, the weakest.</summary>
public enum Evidence
{
    /// <summary>Recalled from a named publication that was not read again. Never a published check.</summary>
    FromMemory,

    /// <summary>The trade agrees on it and no publication was read.</summary>
    CommonPractice,

    /// <summary>Our own arithmetic or judgement, stated so that it can be disputed.</summary>
    Ours,

    /// <summary>Read in a stored copy or a restatement of the source.</summary>
    Seen,
}
