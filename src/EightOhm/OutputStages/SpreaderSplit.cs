using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.OutputStages;

/// <summary>A bias spreader in two parts: as many junctions' worth on the sink as there are junctions that the sink warms, the rest in the cool.</summary>
/// <remarks>A triple has six junctions between the bases and the load, of which two, the output transistors', are on the sink. One multiplier on the
/// sink for the whole voltage would take the bias away three times as fast as the two junctions ask for.</remarks>
[RecordName("spreader-split")]
public sealed partial record SpreaderSplit
{
    private const string Source = "Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 14: the V_BE multiplier, one on the sink and a constant rest";

    /// <summary>Makes a split.</summary>
    /// <param name="V_BB">The whole bias voltage; more than what goes on the sink.</param>
    /// <param name="V_BE">Of the multiplier's transistor at its own current; greater than 0 V.</param>
    /// <param name="tc">How much a V_BE falls for a kelvin, as a positive value; greater than 0 V/K. The same for the sensor and the junctions.</param>
    /// <param name="n_hot">Junctions in the loop that the sink warms; 1 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public SpreaderSplit(ElectricPotential V_BB, ElectricPotential V_BE, VoltageDrift tc, int n_hot)
    {
        (Voltage, SensorVoltage, JunctionDrift, HotJunctions) = (Guard.Positive(V_BB), Guard.Positive(V_BE), Guard.Positive(tc), Guard.Positive(n_hot));
        Guard.NotNegative(Voltage - (n_hot * SensorVoltage), "the part in the cool", "There are fewer junctions in the loop than are said to be hot.");
    }

    /// <summary>The whole bias voltage.</summary>
    [Symbol("V_BB")]
    public ElectricPotential Voltage { get; }

    /// <summary>V_BE of the multiplier's transistor.</summary>
    [Symbol("V_BE")]
    public ElectricPotential SensorVoltage { get; }

    /// <summary>How much a V_BE falls for a kelvin.</summary>
    [Symbol("tc")]
    public VoltageDrift JunctionDrift { get; }

    /// <summary>Junctions that the sink warms: the factor of the multiplier on the sink.</summary>
    [Symbol("n_hot")]
    public int HotJunctions { get; }

    /// <summary>The voltage of the multiplier on the sink.</summary>
    [Formula(Source, Symbol = "V_hot")]
    [RecordName("spreader-split.on-the-sink")]
    public ElectricPotential OnTheSink => HotJunctions * SensorVoltage;

    /// <summary>The voltage that stays in the cool: a second multiplier, or diodes.</summary>
    [Formula(Source, Symbol = "V_cool")]
    [RecordName("spreader-split.in-the-cool")]
    public ElectricPotential InTheCool => Voltage - HotJunctions * SensorVoltage;

    /// <summary>How the split spreader follows the sink: what the hot junctions ask for.</summary>
    [Formula(Source, Symbol = "dV_dT")]
    [RecordName("spreader-split.drift")]
    public VoltageDrift Drift => VbeMultiplier.Drift((double)HotJunctions, JunctionDrift);

    /// <summary>How one multiplier on the sink for the whole voltage would follow it.</summary>
    [Formula(Source, Symbol = "dV_dT_whole")]
    [RecordName("spreader-split.drift-with-single-multiplier")]
    public VoltageDrift DriftWithSingleMultiplier => VbeMultiplier.Drift(VbeMultiplier.Factor(Voltage, SensorVoltage), JunctionDrift);
}
