using EightOhm.Explaining;
using EightOhm.Json;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Devices.CardMembers;

namespace EightOhm.Devices;

/// <summary>A relay by its card: what its contact carries and breaks, how fast, and its coil.</summary>
/// <example><code>var relay = design.Part&lt;Relay&gt;("relay", "cards/relay.json"); RelayVerdict.Judge(V_rail, R_vc, relay.DcVoltage, relay.DcCurrent)</code></example>
[RecordName("relay")]
public sealed class Relay : DeviceCard
{
    internal Relay(JsonPart card)
        : base(card.With("I_carry", "V_dc", "I_dc", "V_ac", "I_ac", "t_operate", "t_release", "V_coil", "R_coil"))
    {
        CarriedCurrent = card["I_carry"].Positive<ElectricCurrent>();
        DcVoltage = card["V_dc"].Positive<ElectricPotential>();
        DcCurrent = card["I_dc"].Positive<ElectricCurrent>();
        AcVoltage = card["V_ac"].Positive<ElectricPotential>();
        AcCurrent = card["I_ac"].Positive<ElectricCurrent>();
        OperateTime = card["t_operate"].Positive<Duration>();
        ReleaseTime = card["t_release"].Positive<Duration>();
        CoilVoltage = card["V_coil"].Positive<ElectricPotential>();
        CoilResistance = card["R_coil"].Positive<ElectricResistance>();
        Refuse(card);
    }

    /// <summary>Current that the closed contact carries, rms.</summary>
    [Symbol("I_carry")]
    [RecordName("relay.carried-current")]
    public ElectricCurrent CarriedCurrent { get; }

    /// <summary>Dc voltage at which the contact breaks <see cref="DcCurrent"/>, load without inductance.</summary>
    [Symbol("V_dc")]
    [RecordName("relay.dc-voltage")]
    public ElectricPotential DcVoltage { get; }

    /// <summary>Dc that the contact breaks at <see cref="DcVoltage"/>.</summary>
    [Symbol("I_dc")]
    [RecordName("relay.dc-current")]
    public ElectricCurrent DcCurrent { get; }

    /// <summary>Ac voltage, rms, at which the contact breaks <see cref="AcCurrent"/>.</summary>
    [Symbol("V_ac")]
    [RecordName("relay.ac-voltage")]
    public ElectricPotential AcVoltage { get; }

    /// <summary>Ac, rms, that the contact breaks at <see cref="AcVoltage"/>.</summary>
    [Symbol("I_ac")]
    [RecordName("relay.ac-current")]
    public ElectricCurrent AcCurrent { get; }

    /// <summary>From the coil's voltage to the closed contact.</summary>
    [Symbol("t_on")]
    [RecordName("relay.operate-time")]
    public Duration OperateTime { get; }

    /// <summary>From the end of the coil's voltage, without a diode across it, to the end of the arc at the rated dc.</summary>
    [Symbol("t_off")]
    [RecordName("relay.release-time")]
    public Duration ReleaseTime { get; }

    /// <summary>Rated coil voltage, dc.</summary>
    [Symbol("V_coil")]
    [RecordName("relay.coil-voltage")]
    public ElectricPotential CoilVoltage { get; }

    /// <summary>Coil resistance.</summary>
    [Symbol("R_coil")]
    [RecordName("relay.coil-resistance")]
    public ElectricResistance CoilResistance { get; }

    /// <summary>Coil current at the rated voltage.</summary>
    [Symbol("I_coil")]
    [RecordName("relay.coil-current")]
    public ElectricCurrent CoilCurrent => CoilVoltage / CoilResistance;

    /// <inheritdoc/>
    public override string ToString() => $"{Name}{(Invented ? " (invented)" : "")}, relay, breaks {Text(DcCurrent)} at {Text(DcVoltage)} dc: {Source}";

    // An arc on ac goes out at the next zero; on dc only distance ends it.
    private void Refuse(JsonPart card)
    {
        double dc = DcVoltage.Volts * DcCurrent.Amperes, ac = AcVoltage.Volts * AcCurrent.Amperes;
        if (dc > ac * (1 + Rounded))
            throw card["I_dc"].Fault($"must be at most what the contact breaks on ac: {Text(AcCurrent)} at {Text(AcVoltage)} (was {Text(DcCurrent)} at {Text(DcVoltage)}). Were dc and ac exchanged?");
        if (AcCurrent.Amperes > CarriedCurrent.Amperes * (1 + Rounded))
            throw card["I_ac"].Fault($"must be at most I_carry, {Text(CarriedCurrent)} (was {Text(AcCurrent)}): a contact breaks no more than it carries.");
        if (DcCurrent.Amperes > CarriedCurrent.Amperes * (1 + Rounded))
            throw card["I_dc"].Fault($"must be at most I_carry, {Text(CarriedCurrent)} (was {Text(DcCurrent)}): a contact breaks no more than it carries.");
    }
}
