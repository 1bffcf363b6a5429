using EightOhm.Explaining;
using EightOhm.Numerics;
using EightOhm.Quantities;
using EightOhm.Supply;
using MathNet.Numerics.RootFinding;
using UnitsNet;

namespace EightOhm.OutputStages;

/// <summary>The power dissipation of an output stage of complementary followers in class B, or AB when it idles, over level, load and phase, and its maximum.</summary>
/// <remarks>That of the transistors; their emitter resistors' is told apart. Class B is exact; class AB is exact for the law of <see cref="SideCurrents"/>.
/// The rail is that of the mean current that the stage itself takes at the level in question. Saturation voltages, drivers and the charge stored at high
/// frequency are left out. A view of <see cref="OutputStage"/>; without cards it may be made by itself.</remarks>
public sealed partial record StageDissipation
{
    // A level found by root finding must pass the limit that it was found on.
    private const double Rounding = 1 + 1e-9;

    /// <summary>A stage on a supply.</summary>
    /// <param name="rails">One rail over the mean current that this stage takes from it, at nominal mains.</param>
    /// <param name="pairs">Pairs in parallel; 1 or more.</param>
    /// <param name="R_E">Emitter resistor of one transistor; 0 Ω or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public StageDissipation(RailLine rails, int pairs, ElectricResistance R_E)
    {
        ArgumentNullException.ThrowIfNull(rails);
        (Rails, Pairs, EmitterResistor) = (rails, Guard.Positive(pairs), Guard.NotNegative(R_E));
    }

    /// <summary>A stage on rails that do not sag.</summary>
    /// <param name="rail">One rail (not rail to rail); greater than 0 V.</param>
    /// <param name="pairs">Pairs in parallel; 1 or more.</param>
    /// <param name="R_E">Emitter resistor of one transistor; 0 Ω or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public StageDissipation(ElectricPotential rail, int pairs, ElectricResistance R_E)
        : this(RailLine.Constant(Guard.Positive(rail)), pairs, R_E)
    {
    }

    /// <summary>One rail over the mean current that this stage takes from it, at nominal mains.</summary>
    public RailLine Rails { get; }

    /// <summary>Pairs in parallel.</summary>
    [Symbol("n")]
    public int Pairs { get; }

    /// <summary>Emitter resistor of one transistor.</summary>
    [Symbol("R_E")]
    public ElectricResistance EmitterResistor { get; }

    /// <summary>Idle current of one pair; 0 A is class B.</summary>
    [Symbol("I_q")]
    public ElectricCurrent IdleCurrent { get; init => field = Guard.NotNegative(value, nameof(IdleCurrent)); }

    /// <summary>A transistor's own series resistance in the emitter: it shapes the crossover, and its dissipation is the transistor's.</summary>
    [Symbol("r_int")]
    public ElectricResistance InternalResistance { get; init => field = Guard.NotNegative(value, nameof(InternalResistance)); }

    /// <summary>Temperature of the junctions, which sets the thermal voltage of the crossover; 55 °C if not given.</summary>
    [Symbol("T_j")]
    public Temperature Junction { get; init => field = Guard.Positive(value, nameof(Junction)); } = 55.degC;

    /// <summary>How far the mains is from nominal: the emf goes with it, the copper's drop does not.</summary>
    [Symbol("x")]
    public Ratio Mains { get; init; }

    /// <summary>One rail without signal.</summary>
    [Symbol("V")]
    public ElectricPotential Rail => ElectricPotential.FromVolts(new Supplied(this).AtPeak(0));

    private SideCurrentLaw Law => new(Pairs * IdleCurrent.Amperes, (EmitterResistor.Ohms + InternalResistance.Ohms) / Pairs, Devices.Junction.ThermalVoltage(Junction).Volts);

    private double Resistor => EmitterResistor.Ohms / Pairs;

    /// <summary>The same stage while the mains is off its nominal value: the supply's emf moves, its copper does not.</summary>
    /// <param name="deviation">Mains over nominal, less one: 10.percent, (−10).percent.</param>
    /// <exception cref="ArgumentOutOfRangeException">No rail would be left.</exception>
    public StageDissipation AtMains(Ratio deviation)
    {
        _ = Rails.AtMains(deviation); // refuses what leaves no rail
        return this with { Mains = deviation };
    }

    /// <summary>One rail while a sine plays.</summary>
    /// <param name="V_p">Peak voltage at the load; 0 V or more.</param>
    /// <param name="Z">Magnitude of the load; greater than 0 Ω.</param>
    /// <returns>The mean rail at the stage's mains.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range, or the supply's line does not reach the current.</exception>
    [Worked("the supply's rail at the mean current that the sine draws")]
    public ElectricPotential RailAt(ElectricPotential V_p, ElectricResistance Z) =>
        ElectricPotential.FromVolts(new Supplied(this).Known(Guard.NotNegative(V_p) / Guard.Positive(Z)));

    /// <summary>The greatest peak voltage at the load: where the rail at that level is used up.</summary>
    /// <param name="Z">Magnitude of the load; greater than 0 Ω.</param>
    /// <param name="phi">Phase of the load, −90° to 90°.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range, or the supply's line does not reach the current.</exception>
    /// <exception cref="InvalidOperationException">The level was not found.</exception>
    [Worked("the level at which the rail, as it is at that level, is all used: a bracketed root search")]
    public ElectricPotential FullSwing(ElectricResistance Z, Angle phi) => ElectricPotential.FromVolts(Full(new(this), Need(Z, phi), Z.Ohms));

    /// <summary>The powers at one level of a sine.</summary>
    /// <param name="V_p">Peak voltage at the load; from 0 V to <see cref="FullSwing"/>.</param>
    /// <param name="Z">Magnitude of the load; greater than 0 Ω.</param>
    /// <param name="phi">Phase of the load, −90° to 90°.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range, or the supply's line does not reach the current.</exception>
    [Worked("supply less load less emitter resistors, both sides' currents averaged over the sine by Gauss-Legendre quadrature")]
    public StagePowers At(ElectricPotential V_p, ElectricResistance Z, Angle phi)
    {
        var (need, level) = (Need(Z, phi), Guard.NotNegative(V_p).Volts);
        var rail = new Supplied(this).Known(V_p / Z);
        if (level * need > rail * Rounding)
            Guard.Refuse(nameof(V_p), V_p, $"at most {QuantityFormat.Short(FullSwing(Z, phi))}", $"The rail at this level is {QuantityFormat.Short(ElectricPotential.FromVolts(rail))} and would be below the swing.");
        var (sum, squares) = Law.OverSine(level / Z.Ohms);
        var (supply, load, resistors) = (rail * sum, level * level / Z.Ohms * Math.Cos(phi.Radians) / 2, Resistor * squares);
        var total = supply - load - resistors;
        return new StagePowers(V_p, ElectricPotential.FromVolts(rail), Power.FromWatts(supply), Power.FromWatts(load), Power.FromWatts(resistors), Power.FromWatts(total), Power.FromWatts(total / (2 * Pairs)), Ratio.FromDecimalFractions(supply > 0 ? load / supply : 0));
    }

    // Rail needed per volt at the load.
    private double Need(ElectricResistance Z, Angle phi) => LoadWithEmitterResistor.Magnitude(Z, phi, EmitterResistor, Pairs).Ohms / Z.Ohms;

    private static double Full(Supplied rail, double need, double z)
    {
        var high = rail.AtPeak(0) / need;
        if (rail.AtPeak(high / z) < high * need && !Brent.TryFindRoot(level => rail.AtPeak(level / z) - (level * need), 0, high, 1e-10 * high, 100, out high))
            throw new InvalidOperationException($"Full swing was not found between 0 V and {QuantityFormat.Short(ElectricPotential.FromVolts(high))}: the rail must fall smoothly with the current.");
        _ = rail.Known(ElectricCurrent.FromAmperes(high / z * (1 - 1e-9)));
        return high;
    }

    // The rail at the stage's mains, over what the stage takes from it.
    private readonly struct Supplied(StageDissipation stage)
    {
        private readonly RailLine line = stage.Mains.DecimalFractions == 0 ? stage.Rails : stage.Rails.AtMains(stage.Mains);
        private readonly SideCurrentLaw law = stage.Law;

        /// <summary>The rail in volts at a mean current, on past the line's last point.</summary>
        [Worked("supply less load less emitter resistors, both sides' currents averaged over the sine by Gauss-Legendre quadrature")]
        public double At(double mean) => line.AtAmperes(mean);

        /// <summary>The rail in volts while the load carries a sine of a peak current, on past the line's last point, for a search.</summary>
        public double AtPeak(double amperes, bool coarse = false) => line.AtAmperes(law.OverSine(amperes, coarse).Sum / 2);

        /// <summary>The same where the line must reach.</summary>
        public double Known(ElectricCurrent peak) => Known(law.OverSine(peak.Amperes).Sum / 2);

        /// <summary>The rail in volts at a mean current that the line must reach.</summary>
        public double Known(double mean) => line.At(ElectricCurrent.FromAmperes(mean)).Volts;
    }
}
