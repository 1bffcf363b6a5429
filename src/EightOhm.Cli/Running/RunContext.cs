using EightOhm.Cli.Ends;

namespace EightOhm.Cli.Running;

/// <summary>What all notebooks of a run share.</summary>
/// <param name="Plan">Which cells run.</param>
/// <param name="Links">What hangs on what.</param>
/// <param name="Log">How cells ended.</param>
/// <param name="Lost">Told of a cell that gave nothing, as soon as that is known.</param>
/// <param name="Limit">The longest that a cell may take.</param>
internal sealed record RunContext(RunPlan Plan, ICellLinks Links, RunLog Log, Action<CellEnd> Lost, TimeSpan Limit);
