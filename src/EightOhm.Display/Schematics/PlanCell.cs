namespace EightOhm.Display.Schematics;

/// <summary>What a name in a plan is.</summary>
internal enum PlanKind { Part, Node, Bend, Ground, Rail }

/// <summary>A name at its place in the plan.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Name">The part's or the node's name.</param>
/// <param name="Column">From 0, leftmost.</param>
/// <param name="Row">From 0, topmost.</param>
/// <param name="Hint">How it lies: <c>-</c> lying, <c>|</c> standing, <c>&lt;</c> and <c>&gt;</c> the way it points; 0 where the plan leaves it open.</param>
internal sealed record PlanCell(PlanKind Kind, string Name, int Column, int Row, char Hint);
