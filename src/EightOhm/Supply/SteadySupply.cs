using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Supply;

/// <summary>A supply of one rail in its periodic steady state.</summary>
public sealed record SteadySupply : RailFigures
{
    internal SteadySupply(RailFigures figures)
        : base(figures)
    {
    }

    /// <summary>What the winding must be built for: emf times its rms current, one winding.</summary>
    /// <remarks>A nameplate counts the voltage at full load, lower by the regulation, times the rated rms current: compare currents, not volt-amperes, where it is close.</remarks>
    [Symbol("S")]
    public ElectricApparentPower ApparentPower => ElectricApparentPower.FromVoltamperes(Secondary.Volts * WindingRms.Amperes);

    /// <summary>Power dissipation of all diodes together, from the solved waveform: drop times mean, resistance times rms squared; an exponential diode's voltage times its current.</summary>
    /// <remarks>The supply's drop and resistance are those of the whole path, so both diodes of a bridge are in it.</remarks>
    [Symbol("P_D")]
    public Power DiodeDissipation => Supply.Diode is { } diode
        ? Power.FromWatts(DiodeMean(diode, OverOneCycle(DiodePoints).Winding)) + (Supply.DiodeResistance * (WindingRms * WindingRms))
        : RectifierDissipation.OfRail(1, Supply.Drop, Supply.DiodeResistance, LoadMean, WindingRms);

    /// <summary>The load that was solved.</summary>
    public RailCurrent Load { get; internal init; } = null!;

    /// <summary>Whether a playing load was replaced by its mean current.</summary>
    public bool ByMeanCurrent { get; internal init; }

    /// <summary>These figures beside the estimates of textbooks and makers.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no load.</exception>
    [Worked("the solved figures beside the closed estimates of the PeakRectifier formulas")]
    public SupplyEstimates BesideTextbook() => new(this, Secondary, Supply.Mains, Supply.Diode?.At(WindingPeak) ?? Supply.Drop, Supply.Reservoir);

    // Enough for five digits of the mean: the pulses are smooth but for their ends.
    private const int DiodePoints = 20_001;

    private static double DiodeMean(ExponentialDiode diode, IReadOnlyList<double> current)
    {
        var sum = 0.0;
        for (var i = 1; i < current.Count; i++)
            sum += current[i] > 0 ? diode.At(ElectricCurrent.FromAmperes(current[i])).Volts * current[i] : 0;
        return sum / (current.Count - 1);
    }

    internal ElectricPotential Secondary { get; init; }

    internal RectifierSupply Supply { get; init; } = null!;
}
