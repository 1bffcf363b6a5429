namespace EightOhm.Record;

/// <summary>How a worst case was found.</summary>
public enum WorstMethod
{
    /// <summary>Every combination of ends and middles, cases and spreads was tried; ranges were then followed from the worst of them.</summary>
    EveryCombination,

    /// <summary>Too many combinations: climbed from the middle, threw random probes, climbed again from the worst of them.</summary>
    Search,
}
