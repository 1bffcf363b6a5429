using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Devices;

/// <summary>The static large-signal model of one bipolar transistor: an exponential junction, a resistance in its emitter, a base current.</summary>
/// <remarks>No charge storage, no Early effect, no saturation. All values for one device. <see cref="Transistor.LargeSignal"/> makes it from a card.</remarks>
[Called("large-signal model")]
public sealed record LargeSignalModel
{
    /// <summary>Saturation current of the base-emitter junction at its temperature; greater than 0 A. It moves the bias voltage and nothing else when both sides are equal.</summary>
    public ElectricCurrent SaturationCurrent { get; init => field = Guard.Positive(value); } = ElectricCurrent.FromAmperes(1e-12);

    /// <summary>Resistance inside the device in series with its emitter: emitter and bond, and base spreading resistance over h_FE; 0 Ω or more.</summary>
    public ElectricResistance InternalResistance { get; init => field = Guard.NotNegative(value); }

    /// <summary>Junction temperature, which sets V_T; 25 °C when not given.</summary>
    public Temperature Junction { get; init => field = Guard.Positive(value); } = Temperature.FromDegreesCelsius(25);

    /// <summary>Current gain at small current; 1 or more. Not given: no base current at all.</summary>
    public double? CurrentGain { get; init => field = value is { } h ? Guard.Between(h, 1, 1e9) : null; }

    /// <summary>Collector current at which the gain has fallen to half: h_FE = h_FE0/(1 + I/I_k). Greater than 0 A; not given: no droop.</summary>
    public ElectricCurrent? KneeCurrent { get; init => field = value is { } i ? Guard.Positive(i) : null; }
}
