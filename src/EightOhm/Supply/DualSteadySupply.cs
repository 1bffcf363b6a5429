using EightOhm.Explaining;
using UnitsNet;

namespace EightOhm.Supply;

/// <summary>A supply of two rails in its periodic steady state.</summary>
public sealed record DualSteadySupply
{
    internal DualSteadySupply(RailFigures positive, RailFigures negative, int halfCycles, double period, RailMeasure measure)
    {
        (Positive, Negative) = (positive, negative);
        // The first half-winding charges the positive rail in even half-cycles and the negative one in odd ones. Where the period has an
        // odd number of half-cycles the next period swaps them, and both halves fare alike over two.
        double one = measure[0].EvenSquare + measure[1].OddSquare, other = measure[0].OddSquare + measure[1].EvenSquare;
        var worse = halfCycles % 2 == 0 ? Math.Max(one, other) : (one + other) / 2;
        HalfWindingRms = ElectricCurrent.FromAmperes(Math.Sqrt(worse / period));
    }

    /// <summary>The positive rail.</summary>
    public RailFigures Positive { get; }

    /// <summary>The negative rail; its voltages are counted positive.</summary>
    public RailFigures Negative { get; }

    /// <summary>Mean of the positive rail.</summary>
    [Symbol("V_dc+")]
    public ElectricPotential PositiveMean => Positive.Mean;

    /// <summary>Mean of the negative rail, counted positive.</summary>
    [Symbol("V_dc-")]
    public ElectricPotential NegativeMean => Negative.Mean;

    /// <summary>The lowest that the positive rail gets.</summary>
    [Symbol("V_min+")]
    public ElectricPotential PositiveMinimum => Positive.Minimum;

    /// <summary>The lowest that the negative rail gets, counted positive.</summary>
    [Symbol("V_min-")]
    public ElectricPotential NegativeMinimum => Negative.Minimum;

    /// <summary>Both rails at their lowest: what a voltage-swing budget is held against.</summary>
    public Rails Minimum => new(PositiveMinimum, NegativeMinimum);

    /// <summary>The larger ripple of both, peak to peak.</summary>
    [Symbol("V_r")]
    public ElectricPotential Ripple => Positive.Ripple > Negative.Ripple ? Positive.Ripple : Negative.Ripple;

    /// <summary>The lowest rail of both while that rail carries its own peak; the lower minimum for loads that have no peak.</summary>
    [Symbol("V_own")]
    public ElectricPotential VoltageAtLoadPeak => Positive.VoltageAtLoadPeak < Negative.VoltageAtLoadPeak ? Positive.VoltageAtLoadPeak : Negative.VoltageAtLoadPeak;

    /// <summary>Current in the busier half-winding, rms: it charges one rail, then the other.</summary>
    [Symbol("I_half")]
    public ElectricCurrent HalfWindingRms { get; }

    /// <summary>Peak current in a half-winding.</summary>
    [Symbol("I_pk")]
    public ElectricCurrent HalfWindingPeak => Positive.WindingPeak > Negative.WindingPeak ? Positive.WindingPeak : Negative.WindingPeak;

    /// <summary>Rms of a half-winding over the mean load current of the busier rail.</summary>
    public double RmsOverDc => (Positive.LoadMean > Negative.LoadMean ? Positive : Negative).LoadMean is var dc && dc.Amperes > 0 ? HalfWindingRms / dc : 0;

    /// <summary>What the transformer must be built for: both halves, emf times the busier half's rms current.</summary>
    /// <remarks>A nameplate counts the voltage at full load, lower by the regulation, times the rated rms current: compare currents, not volt-amperes, where it is close.</remarks>
    [Symbol("S")]
    public ElectricApparentPower ApparentPower => ElectricApparentPower.FromVoltamperes(2 * HalfEmf.Volts * HalfWindingRms.Amperes);

    /// <summary>Power dissipation of the whole bridge, from the solved waveforms: each rail's drop times its mean current, and the diode's resistance times its rms squared.</summary>
    [Symbol("P_D")]
    public Power BridgeDissipation => OfRail(Positive) + OfRail(Negative);

    /// <summary>The highest reverse voltage on a diode at this mains, without load and without its drop.</summary>
    [Symbol("PIV")]
    public ElectricPotential PeakInverseVoltage => PeakInverse.DualRail(HalfEmf * Math.Sqrt(2), default);

    /// <summary>Whether playing loads were replaced by their mean currents.</summary>
    public bool ByMeanCurrent { get; internal init; }

    /// <summary>The positive rail's figures beside the estimates of textbooks and makers.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no load on it.</exception>
    [Worked("the solved figures beside the closed estimates of the PeakRectifier formulas")]
    public SupplyEstimates BesideTextbook() => new(Positive, HalfEmf, Supply.Mains, Supply.Drop, Supply.Reservoir);

    private Power OfRail(RailFigures rail) => RectifierDissipation.OfRail(1, Supply.Drop, Supply.DiodeResistance, rail.LoadMean, rail.WindingRms);

    internal DualRailSupply Supply { get; init; } = null!;

    internal ElectricPotential HalfEmf { get; init; }
}
