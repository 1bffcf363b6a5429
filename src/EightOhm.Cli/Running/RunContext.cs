using EightOhm.Cli.Ends;

namespace EightOhm.Cli.Running;

/// <summary>What all notebooks of a run share.</summary>
/// <param name="Plan">Which cells run.</param>
/// <param name="Needs">What cells need of each other.</param>
/// <param name="Log">How cells ended.</param>
/// <param name="Lost">Told of a cell that gave nothing, as soon as that is known.</param>
/// <param name="Limit">The longest that a cell may take.</param>
internal sealed record RunContext(RunPlan Plan, CellNeeds Needs, RunLog Log, Action<CellEnd> Lost, TimeSpan Limit);
