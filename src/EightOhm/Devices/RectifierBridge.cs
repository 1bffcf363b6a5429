using EightOhm.Explaining;
using EightOhm.Json;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Devices.CardMembers;

namespace EightOhm.Devices;

/// <summary>A rectifier bridge of four diodes in one case, by its card.</summary>
/// <remarks>Figures of one diode unless said otherwise. A diode's drop is a threshold and a slope: <see cref="Threshold"/> + <see cref="SlopeResistance"/>·I.</remarks>
/// <example><code>var bridge = design.Part&lt;RectifierBridge&gt;("bridge", "cards/bridge.json"); bridge.DropAt(10.A)</code></example>
[RecordName("rectifier-bridge")]
public sealed class RectifierBridge : DeviceCard
{
    internal RectifierBridge(JsonPart card)
        : base(card.With("V_RRM", "I_FAV", "T_C", "I_FSM", "t_FSM", "V_F0", "r_d", "V_D0", "theta_JC", "T_J"))
    {
        MaxReverseVoltage = card["V_RRM"].Positive<ElectricPotential>();
        AverageCurrent = card["I_FAV"].Positive<ElectricCurrent>();
        CaseTemperature = card["T_C"].Positive<Temperature>();
        SurgeCurrent = card["I_FSM"].Positive<ElectricCurrent>();
        SurgeLength = card["t_FSM"].Positive<Duration>();
        Threshold = card["V_F0"].Positive<ElectricPotential>();
        SlopeResistance = card["r_d"].NotNegative<ElectricResistance>("r_d");
        DropAtRest = card["V_D0"].Positive<ElectricPotential>();
        JunctionToCase = card["theta_JC"].Positive<ThermalResistance>();
        MaxJunctionTemperature = card["T_J"].Positive<Temperature>();
        Refuse(card);
    }

    /// <summary>Repetitive peak reverse voltage.</summary>
    [Symbol("V_RRM")]
    [RecordName("rectifier-bridge.max-reverse-voltage")]
    public ElectricPotential MaxReverseVoltage { get; }

    /// <summary>Average output current of the bridge, half-sines, with its case at <see cref="CaseTemperature"/>.</summary>
    [Symbol("I_FAV")]
    [RecordName("rectifier-bridge.average-current")]
    public ElectricCurrent AverageCurrent { get; }

    /// <summary>The case temperature up to which the average current holds.</summary>
    [Symbol("T_C")]
    [RecordName("rectifier-bridge.case-temperature")]
    public Temperature CaseTemperature { get; }

    /// <summary>Peak of a single half-sine that may pass now and then.</summary>
    [Symbol("I_FSM")]
    [RecordName("rectifier-bridge.surge-current")]
    public ElectricCurrent SurgeCurrent { get; }

    /// <summary>How long that half-sine lasts.</summary>
    [Symbol("t_FSM")]
    [RecordName("rectifier-bridge.surge-length")]
    public Duration SurgeLength { get; }

    /// <summary>The threshold of a diode's drop, as its line at high current meets zero.</summary>
    [Symbol("V_F0")]
    [RecordName("rectifier-bridge.threshold")]
    public ElectricPotential Threshold { get; }

    /// <summary>The slope of a diode's drop.</summary>
    [Symbol("r_d")]
    [RecordName("rectifier-bridge.slope-resistance")]
    public ElectricResistance SlopeResistance { get; }

    /// <summary>The drop of a diode that carries hardly any current: that of a rail without load.</summary>
    [Symbol("V_D0")]
    [RecordName("rectifier-bridge.drop-at-rest")]
    public ElectricPotential DropAtRest { get; }

    /// <summary>Junction to case, of the whole bridge with its heat.</summary>
    [Symbol("theta_JC")]
    [RecordName("rectifier-bridge.junction-to-case")]
    public ThermalResistance JunctionToCase { get; }

    /// <summary>Maximum rated junction temperature.</summary>
    [Symbol("T_J")]
    [RecordName("rectifier-bridge.max-junction-temperature")]
    public Temperature MaxJunctionTemperature { get; }

    /// <summary>The heat integral of the surge, a half-sine: I_FSM²·t/2.</summary>
    [Symbol("W_FSM")]
    [RecordName("rectifier-bridge.surge-integral")]
    public JouleIntegral SurgeIntegral => new(SurgeCurrent.Amperes * SurgeCurrent.Amperes * SurgeLength.Seconds / 2);

    /// <summary>The drop of one diode at a current.</summary>
    /// <param name="I">Its current at that moment; 0 A or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The current is negative.</exception>
    [Worked("threshold and slope of the device data")]
    public ElectricPotential DropAt(ElectricCurrent I) => Threshold + (SlopeResistance * Guard.NotNegative(I));

    /// <inheritdoc/>
    public override string ToString() => $"{Name}{(Invented ? " (invented)" : "")}, rectifier bridge, {Text(MaxReverseVoltage)}, {Text(AverageCurrent)}: {Source}";

    // Each of two diodes in series carries half-sines of peak π/2 times the bridge's average.
    private void Refuse(JsonPart card)
    {
        var peak = AverageCurrent * (Math.PI / 2);
        if (SurgeCurrent < peak)
            throw card["I_FSM"].Fault($"must be at least the peak of the half-sines of I_FAV, {Text(peak)} (was {Text(SurgeCurrent)}).");
        if (DropAtRest > Threshold)
            throw card["V_D0"].Fault($"must be at most V_F0, {Text(Threshold)} (was {Text(DropAtRest)}): a diode drops less when it carries less.");
        if (!(MaxJunctionTemperature > CaseTemperature))
            throw card["T_J"].Fault($"must be above T_C, {Text(CaseTemperature)} (was {Text(MaxJunctionTemperature)}).");
        double average = AverageCurrent.Amperes, rms = peak.Amperes / Math.Sqrt(2);
        var heat = 2 * ((Threshold.Volts * average) + (SlopeResistance.Ohms * rms * rms));
        var allowed = MaxJunctionTemperature.Kelvins - CaseTemperature.Kelvins;
        if (heat * JunctionToCase.Si > allowed * (1 + Rounded))
            throw card["theta_JC"].Fault($"must keep the junction at T_J when I_FAV flows: {Text(Power.FromWatts(heat))} in the bridge needs {Text(ThermalResistance.FromSi(allowed / heat))} or less from T_C, {Text(CaseTemperature)} (was {Text(JunctionToCase)}). Look for a misread one of them.");
    }
}
