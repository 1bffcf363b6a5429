using EightOhm.Explaining;
using EightOhm.OutputStages;
using EightOhm.Quantities;
using EightOhm.Samples;
using UnitsNet;

namespace EightOhm.SafeAreas;

/// <summary>What one transistor of one side of a class-B stage sees while it plays a sine into a load: its voltage and current through the half-wave.</summary>
/// <remarks>The n pairs share the current equally, each with its own emitter resistor; no bias. With the current at I·sin α the output is at
/// V_p·sin(α + φ), the transistor at V − V_p·sin(α + φ) − I·R_E/n·sin α. An inductive and a capacitive load of the same phase trace the same ellipse, in opposite senses.</remarks>
public sealed class LoadEllipse
{
    private readonly double _rail;
    private readonly double _peak;
    private readonly double _each;
    private readonly double _drop;
    private readonly double _phase;
    private readonly Lazy<double> _hottest;
    private readonly HalfWave _wave;

    /// <summary>A load on a stage.</summary>
    /// <param name="V">One rail (not rail to rail), at the mains voltage that counts; greater than 0 V.</param>
    /// <param name="V_p">Greatest peak voltage at the output; greater than 0 V.</param>
    /// <param name="Z">Magnitude of the load; greater than 0 Ω.</param>
    /// <param name="phi">Phase of the load, from −90° to 90°.</param>
    /// <param name="R_E">Emitter resistor of one transistor; 0 Ω or more.</param>
    /// <param name="n">Pairs in parallel; 1 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range, or the rail is too low for the swing and the drop of the emitter resistors.</exception>
    public LoadEllipse(ElectricPotential V, ElectricPotential V_p, ElectricResistance Z, Angle phi, ElectricResistance R_E, int n)
    {
        (Rail, PeakVoltage, Magnitude, Phase, EmitterResistor, Pairs) = (Guard.Positive(V), Guard.Positive(V_p), Guard.Positive(Z), phi, Guard.NotNegative(R_E), Guard.Positive(n));
        Guard.Between(phi, Angle.FromDegrees(-90), Angle.FromDegrees(90), hint: "A loudspeaker takes power; it gives none.");
        (_rail, _peak, _phase) = (V.Volts, V_p.Volts, Math.Abs(phi.Radians));
        _each = _peak / Z.Ohms / n;
        _drop = _each * R_E.Ohms;
        _wave = new(_rail, _peak, Z.Ohms, _phase, R_E.Ohms / n, default);
        _hottest = new(() => _wave.Highest().Angle - _phase);
        var needed = Needed(_drop);
        if (needed > _rail)
            Guard.Refuse(nameof(V), V, $"{QuantityFormat.Short(ElectricPotential.FromVolts(needed))} or more: the peak of {QuantityFormat.Short(V_p)} and the drop of the emitter resistors", "Raise the rail or lower V_p.");
    }

    /// <summary>One rail.</summary>
    [Symbol("V")]
    public ElectricPotential Rail { get; }

    /// <summary>Greatest peak voltage at the output.</summary>
    [Symbol("V_p")]
    public ElectricPotential PeakVoltage { get; }

    /// <summary>Magnitude of the load.</summary>
    [Symbol("Z")]
    public ElectricResistance Magnitude { get; }

    /// <summary>Phase of the load.</summary>
    [Symbol("phi")]
    public Angle Phase { get; }

    /// <summary>Emitter resistor of one transistor.</summary>
    [Symbol("R_E")]
    public ElectricResistance EmitterResistor { get; }

    /// <summary>Pairs in parallel.</summary>
    [Symbol("n")]
    public int Pairs { get; }

    /// <summary>Peak current of one transistor.</summary>
    [Symbol("I_p")]
    public ElectricCurrent PeakCurrentOfOne => ElectricCurrent.FromAmperes(_each);

    /// <summary>Peak current of the load.</summary>
    [Symbol("I_o")]
    public ElectricCurrent PeakCurrent => PeakVoltage / Magnitude;

    /// <summary>The most that a transistor sees, while it does not conduct: the rail and the other side's peak.</summary>
    [Symbol("V_off")]
    public ElectricPotential MaxCollectorEmitterVoltage => Rail + PeakVoltage;

    /// <summary>Peak instantaneous dissipation of one transistor, at the greatest peak voltage; the emitter resistor's own not counted.</summary>
    [Symbol("p_max")]
    public Power PeakDissipation => Power.FromWatts(_wave.Dissipation(_hottest.Value + _phase) / Pairs);

    /// <summary>Voltage across the transistor then; at full swing it is more than the rail when the phase is above 45°.</summary>
    [Symbol("V_at")]
    public ElectricPotential VoltageAtPeak => ElectricPotential.FromVolts(Voltage(1, _hottest.Value));

    /// <summary>Current of one transistor then.</summary>
    [Symbol("I_at")]
    public ElectricCurrent CurrentAtPeak => ElectricCurrent.FromAmperes(Current(1, _hottest.Value));

    /// <summary>The load in words.</summary>
    public string Name => $"{QuantityFormat.Short(Magnitude)} at {QuantityFormat.Short(Phase)}";

    /// <summary>The half-wave as a chart draws it: the current of one transistor over its collector-emitter voltage, from the begin of the half-wave to its end.</summary>
    /// <param name="points">How many points; 2 or more.</param>
    /// <param name="level">Share of the greatest peak voltage; above 0, at most 1.</param>
    /// <returns>The trace, which turns back: its points are read in order.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Worked("voltage across the transistor and its current over the half-wave, instant by instant")]
    public Curve<ElectricPotential, ElectricCurrent> Trace(int points = 181, double level = 1)
    {
        Guard.Between(points, 2, 100_000);
        Guard.Between(Guard.Positive(level), 0, 1);
        double[] angles = [.. Enumerable.Range(0, points).Select(i => Math.PI * i / (points - 1))];
        return new([.. angles.Select(a => Voltage(level, a))], [.. angles.Select(a => Current(level, a))]);
    }

    /// <inheritdoc/>
    public override string ToString() => $"{Name}, {QuantityFormat.Short(PeakVoltage)} peak on {QuantityFormat.Short(Rail)}, {Pairs} {(Pairs == 1 ? "pair" : "pairs")}";

    /// <summary>Whether the rail is high enough for the same load on another number of pairs.</summary>
    internal bool Fits(int n) => Needed(_drop * Pairs / n) <= _rail;

    /// <summary>The same load on another number of pairs.</summary>
    internal LoadEllipse With(int n) => new(Rail, PeakVoltage, Magnitude, Phase, EmitterResistor, n);

    /// <summary>An instant of the half-wave, which many levels share.</summary>
    internal EllipseInstant At(double angle)
    {
        double sine = Math.Sin(angle), shifted = Math.Sin(angle + _phase);
        return new(sine, shifted, (_peak * shifted) + (_drop * sine));
    }

    internal double Output(double level, in EllipseInstant at) => level * _peak * at.Shifted;

    internal double Current(double level, in EllipseInstant at) => level * _each * at.Sine;

    internal double Voltage(double level, in EllipseInstant at) => _rail - (level * at.Taken);

    internal double Current(double level, double angle) => Current(level, At(angle));

    internal double Voltage(double level, double angle) => Voltage(level, At(angle));

    // The output and the drop are two sines φ apart; together they must stay below the rail.
    private double Needed(double drop) => Math.Sqrt((_peak * _peak) + (2 * _peak * drop * Math.Cos(_phase)) + (drop * drop)) * (1 - 1e-12);
}
