using EightOhm.Explaining;
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

    /// <summary>The load that was solved.</summary>
    public RailCurrent Load { get; internal init; } = null!;

    /// <summary>Whether a playing load was replaced by its mean current.</summary>
    public bool ByMeanCurrent { get; internal init; }

    /// <summary>These figures beside the estimates of textbooks and makers.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no load.</exception>
    [Worked("the solved figures beside the closed estimates of the PeakRectifier formulas")]
    public SupplyEstimates BesideTextbook() => new(this, Secondary, Supply.Mains, Supply.Diode?.At(WindingPeak) ?? Supply.Drop, Supply.Reservoir);

    internal ElectricPotential Secondary { get; init; }

    internal RectifierSupply Supply { get; init; } = null!;
}
