namespace EightOhm.SafeAreas;

/// <summary>What a load line is at an instant of its half-wave at any level: the current's sine, the output's, and what output and emitter resistor take of the rail at full level, in V.</summary>
internal readonly record struct EllipseInstant(double Sine, double Shifted, double Taken);
