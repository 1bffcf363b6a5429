using EightOhm.Explaining;
using EightOhm.Quantities;
using EightOhm.Thermal;
using UnitsNet;

namespace EightOhm.OutputStages;

/// <content>Transfer, driving and tracking.</content>
public sealed partial record OutputStage
{
    /// <summary>The followers as the signal sees them, made from the cards, with each card's current gain fitted up to the current that the level asks of it.</summary>
    /// <param name="load">Load, resistive; greater than 0 Ω.</param>
    /// <param name="peak">The largest peak output voltage (not rms) that will be asked for; greater than 0 V.</param>
    /// <returns>The followers, at any bias: <c>.EqualGainBias()</c>, <c>.BiasedAt(I_q)</c>, <c>.LeastDistortionBias(peak)</c>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range, or a card's table of h_FE does not reach the current asked of it.</exception>
    /// <exception cref="ArgumentException">There are pre-drivers without drivers.</exception>
    [Worked("the followers of the stage, each device's current gain fitted up to what the level asks of it")]
    public EmitterFollowerStage Transfer(ElectricResistance load, ElectricPotential peak)
    {
        Guard.Positive(load);
        Guard.Positive(peak);
        var (upper, lower) = (Upper(peak / load), Lower(peak / load));
        return new EmitterFollowerStage(load, Pairs, EmitterResistor)
        {
            Source = SourceImpedance,
            TransitionFrequency = TransitionFrequency,
            Device = Npn.LargeSignal(Junction, peak / load / Pairs),
            Complement = Pnp.LargeSignal(Junction, peak / load / Pairs),
            Drivers = Drivers?.Followers(upper[0], lower[0]),
            PreDrivers = PreDrivers?.Followers(upper[1], lower[1]),
        };
    }

    /// <summary>What the drivers, and then the pre-drivers, have to do at a level: of the side that needs more.</summary>
    /// <param name="V_p">Peak voltage at the load; from 0 V to full swing.</param>
    /// <param name="Z">Magnitude of the load; greater than 0 Ω.</param>
    /// <param name="phi">Phase of the load, −90° to 90°.</param>
    /// <returns>One for each stage of drivers; peak base current demand, gain at the peak, peak current and mean dissipation of one of them.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range, or a card's table of h_FE does not reach the current asked of it.</exception>
    public IReadOnlyList<DriverLoad> Driving(ElectricPotential V_p, ElectricResistance Z, Angle phi)
    {
        var rail = Dissipation.At(V_p, Z, phi).Rail;
        List<DriverLoad> loads = [];
        Func<double, double> asked = current => Math.Max(current / Npn.GainFrom(current / Pairs), current / Pnp.GainFrom(current / Pairs));
        Npn.GainAt(UnitMath.Max(V_p / Z / Pairs, Npn.GainTable[0].Current));
        Pnp.GainAt(UnitMath.Max(V_p / Z / Pairs, Pnp.GainTable[0].Current));
        foreach (var (stage, standing) in Stages().Zip(Standing()))
        {
            var bases = asked;
            loads.Add(OutputStages.Drivers.Of(rail, V_p, Z, phi, bases, standing));
            stage.Npn.GainAt(loads[^1].PeakCurrent);
            stage.Pnp.GainAt(loads[^1].PeakCurrent);
            asked = current => (bases(current) + standing.Amperes) is var own ? Math.Max(own / stage.Npn.GainFrom(own), own / stage.Pnp.GainFrom(own)) : 0;
        }

        return loads;
    }

    /// <summary>The idle current over time and temperature, with a spreader that feels the temperature of one node.</summary>
    /// <param name="network">The thermal network.</param>
    /// <param name="junctions">The junctions of the output transistors, one node each; 1 or more.</param>
    /// <param name="sensor">Where the spreader is and how it falls there.</param>
    /// <param name="design">The temperatures at which the current was set; at idle in this ambient when not given.</param>
    /// <param name="drivers">The junctions of drivers and pre-drivers that warm as well, with their heat at idle (<see cref="Driving"/> at 0 V); none when not given.</param>
    /// <returns>What <see cref="BiasTracking.Follow"/> follows through time; its rail is this stage's without signal, at its mains.</returns>
    /// <exception cref="ArgumentException">A node is of another network, or a driver's is taken.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The stage has no idle current, or no resistance in its emitters.</exception>
    [Worked("the stage on its heat path, its drift the mean of both devices'")]
    public BiasTracking Tracking(ThermalNetwork network, IReadOnlyList<HeatNode> junctions, BiasSensor sensor, NodeTemperatures? design = null, IReadOnlyList<DriverJunction>? drivers = null)
    {
        Guard.Positive(IdleCurrent, nameof(IdleCurrent), "A stage in class B has no idle current to follow.");
        return new(network, junctions, sensor, Dissipation.Rail, IdleCurrent, EmitterResistor + InternalResistance, (Npn.DriftAt(IdleCurrent) + Pnp.DriftAt(IdleCurrent)) / 2, design) { Drivers = drivers ?? [] };
    }

    // The currents of drivers and pre-drivers at the peak, of one side.
    private ElectricCurrent[] Upper(ElectricCurrent peak) => Peaks(peak, Npn.GainAt(peak / Pairs), stage => stage.Npn);

    private ElectricCurrent[] Lower(ElectricCurrent peak) => Peaks(peak, Pnp.GainAt(peak / Pairs), stage => stage.Pnp);

    private ElectricCurrent[] Peaks(ElectricCurrent peak, double gain, Func<StageDrivers, Devices.Transistor> side)
    {
        var bases = peak / gain;
        List<ElectricCurrent> currents = [];
        foreach (var (stage, standing) in Stages().Zip(Standing()))
        {
            currents.Add(bases + standing);
            bases = currents[^1] / side(stage).GainAt(currents[^1]);
        }

        return [.. currents];
    }

    private StageDrivers[] Stages()
    {
        if (PreDrivers is not null && Drivers is null)
            throw new ArgumentException("A stage with pre-drivers has drivers as well: give Drivers, or call the only ones Drivers.");
        return [.. new[] { Drivers, PreDrivers }.OfType<StageDrivers>()];
    }

    // In the resistors between the emitters at idle: of the junctions downstream, base currents left aside.
    private List<ElectricCurrent> Standing()
    {
        var idle = IdleCurrent.Amperes > 0 ? IdleCurrent : EqualGainCurrent;
        var across = Npn.BaseEmitterVoltageAt(idle, Junction) + Pnp.BaseEmitterVoltageAt(idle, Junction) + (2 * idle * (EmitterResistor + InternalResistance));
        List<ElectricCurrent> standing = [];
        foreach (var stage in Stages())
        {
            standing.Add(across / stage.BetweenEmitters);
            across += stage.Npn.BaseEmitterVoltageAt(standing[^1], stage.Junction) + stage.Pnp.BaseEmitterVoltageAt(standing[^1], stage.Junction);
        }

        return standing;
    }
}
