using EightOhm.Devices;
using EightOhm.Quantities;
using EightOhm.Thermal;
using UnitsNet;

namespace EightOhm.Sizing;

/// <summary>A heat sink under the output transistors of a channel: at the heat of music, with the error of its reckoning, and with what its base adds under each.</summary>
internal sealed class SizedSink
{
    private readonly double spread;
    private readonly double each;
    private readonly SizedOutputs outputs;
    private readonly SizingBasis basis;
    private readonly AmplifierTargets targets;

    public SizedSink(HeatSinkCard card, SizedOutputs outputs, AmplifierTargets targets, SizingBasis basis)
    {
        (this.outputs, this.basis, this.targets) = (outputs, basis, targets);
        ToAir = PreferredValues.Up(Free(card) * (1 + basis.FinError.DecimalFractions), 2).K_per_W;
        var devices = 2 * outputs.Pairs;
        each = (double)outputs.Worst.Watts / devices;
        try
        {
            spread = SpreadingResistance.Of(basis.Tab, card.BaseThickness, card.Width * card.Height / devices, card.Conductivity, devices * ToAir).Si;
            BaseShare = 1;
        }
        catch (RefusedValueException)
        {
            // So small a base that its transistors cover it: nothing spreads, and nothing is left to mount them on.
            BaseShare = card.Width * card.Height / (devices * basis.Tab) * GreatestShare;
        }
    }

    /// <summary>Case of one transistor to the sink: its insulator and its part of the base.</summary>
    public ThermalResistance CaseToSink => (basis.Insulator.Si + spread).K_per_W;

    /// <summary>Whether its base has room for the transistors: 1 and more is enough.</summary>
    public double BaseShare { get; }

    /// <summary>Sink to air, to be counted on.</summary>
    public ThermalResistance ToAir { get; }

    /// <summary>Where the thermostat opens: the cases are then as warm as their area is taken for. A little above the air where so few pairs leave nothing, and say so.</summary>
    public Temperature CutOff => Math.Floor(Math.Max(
        basis.Case.DegreesCelsius - basis.CutTolerance.Kelvins - ((basis.Insulator.Si + spread) * each), targets.Air.DegreesCelsius + LeastRise)).degC;

    /// <summary>Kelvins of the sink over the air with music.</summary>
    public double MusicRise => (double)outputs.Music.Watts * ToAir.Si;

    /// <summary>Kelvins of the junctions over the air while the worst sine lasts, at the crest of the lowest note.</summary>
    public double JunctionRise => CaseRise + Math.Max(outputs.Crest, each * Junction);

    /// <summary>The cases while the worst sine lasts.</summary>
    public Temperature Case => (targets.Air.DegreesCelsius + CaseRise).degC;

    /// <summary>Kelvins of the junctions over the air with music.</summary>
    public double MusicJunctionRise => MusicRise + ((double)outputs.Music.Watts / (2 * outputs.Pairs) * (Junction + basis.Insulator.Si + spread));

    /// <summary>The junctions at idle, at nominal mains.</summary>
    public Temperature IdleJunction => SharedSink.Junction(targets.Air, outputs.Idling / (1 + targets.MainsTolerance.DecimalFractions), 2 * outputs.Pairs, default,
        Junction.K_per_W, basis.Insulator + spread.K_per_W, ToAir);

    private double CaseRise => ((double)outputs.Worst.Watts * ToAir.Si) + (each * (basis.Insulator.Si + spread));

    private double Junction => Math.Max(outputs.Npn.JunctionToCase.Si, outputs.Pnp.JunctionToCase.Si);

    private const double LeastRise = 10;

    // Of the base, that the transistors may cover so that heat still spreads in it: SpreadingResistance's own bound.
    private const double GreatestShare = 0.25;

    // Where the heat is more than still air takes from it at all, what its maker rates: the answer is no in either case.
    private double Free(HeatSinkCard card)
    {
        try
        {
            return PlateFinSink.Of(card).At(outputs.Music, targets.Air).Resistance.Si;
        }
        catch (RefusedValueException)
        {
            return card.ToAir.Si;
        }
    }
}
