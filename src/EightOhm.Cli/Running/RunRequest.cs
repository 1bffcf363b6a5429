namespace EightOhm.Cli.Running;

/// <summary>What the person asked for.</summary>
/// <param name="Notebooks">A notebook or a folder of notebooks.</param>
/// <param name="Settings">Entries of the record to change first, each "name=value with unit".</param>
/// <param name="Out">The folder of the book.</param>
/// <param name="Save">Whether outputs and record go back to their files.</param>
/// <param name="Limit">The longest that a cell may take.</param>
internal sealed record RunRequest(string Notebooks, IReadOnlyList<string> Settings, string Out, bool Save, TimeSpan Limit);
