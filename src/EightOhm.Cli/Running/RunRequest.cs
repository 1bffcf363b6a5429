using EightOhm.Cli.Output;

namespace EightOhm.Cli.Running;

/// <summary>What the person asked for.</summary>
/// <param name="Notebooks">A notebook or a folder of notebooks.</param>
/// <param name="Settings">Inputs of the record to move first, each "name=value with unit".</param>
/// <param name="Full">Whether every cell runs, also those that do not hang on what was set.</param>
/// <param name="Publication">Prepares what is made of the notebooks, or refuses before anything runs.</param>
/// <param name="Save">Whether outputs and record go back to their files.</param>
/// <param name="Limit">The longest that a cell may take.</param>
internal sealed record RunRequest(string Notebooks, IReadOnlyList<string> Settings, bool Full, Func<IPublication> Publication, bool Save, TimeSpan Limit);
