using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Thermal;

/// <summary>What a plate-fin sink does at one heat. Correlations of natural convection are good to about ±10 % on a free-standing sink
/// (common practice, no source); a case around it, other sinks beside it and dust make it worse.</summary>
public sealed record SinkAtHeat
{
    internal SinkAtHeat(PlateFinSink sink, TemperatureDelta rise, Power heat, Temperature air)
    {
        var loss = SinkBalance.Checked(rise, sink, air);
        (Heat, Rise, Base, Resistance) = (heat, rise, air + rise, rise / heat);
        (ByChannels, ByFaces, ByRadiation) = (Power.FromWatts(loss.Channels), Power.FromWatts(loss.Faces), Power.FromWatts(loss.Radiated));
        (FinEfficiency, Spacing, ChannelNumber, Coefficient) = (Ratio.FromDecimalFractions(loss.Efficiency), sink.Spacing, loss.Channel, HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(loss.Coefficient));
    }

    /// <summary>The heat.</summary>
    [Symbol("P")]
    public Power Heat { get; }

    /// <summary>Base less air.</summary>
    [Symbol("dT_s")]
    public TemperatureDelta Rise { get; }

    /// <summary>The base's temperature.</summary>
    [Symbol("T_s")]
    public Temperature Base { get; }

    /// <summary>Sink to air at this heat; less at more heat.</summary>
    [Symbol("theta_SA")]
    public ThermalResistance Resistance { get; }

    /// <summary>What the air between the fins takes.</summary>
    public Power ByChannels { get; }

    /// <summary>What the air at the outer faces takes.</summary>
    public Power ByFaces { get; }

    /// <summary>What is radiated.</summary>
    public Power ByRadiation { get; }

    /// <summary>Of the fins.</summary>
    [Symbol("eta_f")]
    public Ratio FinEfficiency { get; }

    /// <summary>Clear space between two fins.</summary>
    [Symbol("S")]
    public Length Spacing { get; }

    /// <summary>Ra·(S/L)⁴: about 54 where plates of one temperature are best spaced.</summary>
    [Symbol("El")]
    public double ChannelNumber { get; }

    /// <summary>Heat transfer coefficient in the channels.</summary>
    [Symbol("h")]
    public HeatTransferCoefficient Coefficient { get; }
}
