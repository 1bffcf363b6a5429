using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Sizing;

/// <summary>What a first sizing takes for granted: limits that a designer sets and parts that it does not choose.</summary>
/// <remarks>Common practice, no source, unless said otherwise; the design states each of them itself and moves them as it likes.</remarks>
public sealed record SizingBasis
{
    /// <summary>Case of the output transistors at which their safe area is taken.</summary>
    [Symbol("T_case")]
    public Temperature Case { get; init; } = 76.degC;

    /// <summary>Junction limit of the design, below the card's.</summary>
    [Symbol("T_jmax")]
    public Temperature Junction { get; init; } = 125.degC;

    /// <summary>Tolerance of the thermostat, either way.</summary>
    [Symbol("dT_cut")]
    public TemperatureDelta CutTolerance { get; init; } = 3.0.K;

    /// <summary>Error of the correlation for a sink that stands free.</summary>
    [Symbol("m_fin")]
    public Ratio FinError { get; init; } = 10.percent;

    /// <summary>Metal of a transistor on the sink.</summary>
    [Symbol("A_tab")]
    public Area Tab { get; init; } = Area.FromSquareCentimeters(3.6);

    /// <summary>Of a safe area, used at most by a load: what lies between is the limiter's, with the spread of its parts.</summary>
    [Symbol("u_SOA")]
    public Ratio AreaUse { get; init; } = 55.percent;

    /// <summary>Distortion at the highest frequency into the rated load, at most.</summary>
    [Symbol("D_max")]
    public Ratio Distortion { get; init; } = 20.ppm;

    /// <summary>The same into the minimum rated load, where that is another.</summary>
    [Symbol("D_maxmin")]
    public Ratio LeastDistortion { get; init; } = 40.ppm;

    /// <summary>Signal to noise at the sensitivity, over the whole band, at least.</summary>
    [Symbol("SNR_min")]
    public Gain SignalToNoise { get; init; } = 112.dB;

    /// <summary>Phase margin of the outer loop, at least.</summary>
    [Symbol("PM_min")]
    public Angle PhaseMargin { get; init; } = 60.deg;

    /// <summary>Distance of the outer loop gain from the critical point, at least.</summary>
    [Symbol("d_min")]
    public double Distance { get; init; } = 0.65;

    /// <summary>Phase margin of the loop around the second stage, at least.</summary>
    [Symbol("PM_in")]
    public Angle InnerMargin { get; init; } = 45.deg;

    /// <summary>Pole of the output transistors, at idle.</summary>
    [Symbol("f_p1")]
    public Frequency OutputPole { get; init; } = 8.MHz;

    /// <summary>Pole of the drivers.</summary>
    [Symbol("f_p2")]
    public Frequency DriverPole { get; init; } = 40.MHz;

    /// <summary>How far poles are off, either way.</summary>
    [Symbol("m_p")]
    public Ratio PoleSpread { get; init; } = 30.percent;

    /// <summary>Delay of all that has no pole of its own, at most: pair, cascode and mirror, pre-drivers, wiring.</summary>
    [Symbol("t_dmax")]
    public Duration Delay { get; init; } = 20.ns;

    /// <summary>The input pair, warm.</summary>
    [Symbol("T_pair")]
    public Temperature Pair { get; init; } = 45.degC;

    /// <summary>A junction just switched on, coldest.</summary>
    [Symbol("T_cold")]
    public Temperature Cold { get; init; } = 10.degC;

    /// <summary>Output junctions at idle.</summary>
    [Symbol("T_out")]
    public Temperature Idle { get; init; } = 55.degC;

    /// <summary>Insulator of each transistor.</summary>
    [Symbol("theta_CS")]
    public ThermalResistance Insulator { get; init; } = 0.35.K_per_W;

    /// <summary>Undepleted collector of an output transistor.</summary>
    [Symbol("R_C")]
    public ElectricResistance Collector { get; init; } = 0.4.Ohm;

    /// <summary>What the stages before the outputs need of the rail, beside junctions.</summary>
    [Symbol("V_2nd")]
    public ElectricPotential SecondStage { get; init; } = 2.V;

    /// <summary>What the front-end filter takes of the rail.</summary>
    [Symbol("V_ff")]
    public ElectricPotential Filter { get; init; } = 0.48.V;

    /// <summary>What each rail gives away for a channel beside its outputs.</summary>
    [Symbol("I_small")]
    public ElectricCurrent Besides { get; init; } = 26.mA;

    /// <summary>Wiring in series with each half-winding.</summary>
    [Symbol("R_w")]
    public ElectricResistance Wiring { get; init; } = 10.mOhm;

    /// <summary>Mains before the socket.</summary>
    [Symbol("R_line")]
    public ElectricResistance LineResistance { get; init; } = 0.5.Ohm;

    /// <summary>Ripple of a rail at rated power over the rail, peak to peak, by which the reservoirs are chosen.</summary>
    [Symbol("k_rip")]
    public Ratio Ripple { get; init; } = 5.percent;

    /// <summary>Of a semiconductor's rated voltage, used at most.</summary>
    [Symbol("k_dev")]
    public Ratio VoltageUse { get; init; } = 80.percent;

    /// <summary>Air inside the case over the air around, warm.</summary>
    [Symbol("dT_in")]
    public TemperatureDelta InsideRise { get; init; } = 10.K;

    internal Temperature InsideAir(AmplifierTargets targets) => targets.Air + InsideRise;

    /// <summary>Bridge case to that air, by the chassis.</summary>
    [Symbol("theta_br")]
    public ThermalResistance BridgeToAir { get; init; } = 2.K_per_W;

    /// <summary>Junction of the bridge below its rating, at least.</summary>
    [Symbol("dT_br")]
    public TemperatureDelta JunctionRoom { get; init; } = 25.0.K;

    /// <summary>A rail that counts as discharged.</summary>
    [Symbol("V_safe")]
    public ElectricPotential SafeVoltage { get; init; } = 10.V;

    /// <summary>After how long it must be, by the bleeder alone.</summary>
    [Symbol("t_safe")]
    public Duration SafeTime { get; init; } = 180.s;

    /// <summary>Of a reservoir's rated voltage, used at most.</summary>
    [Symbol("k_cap")]
    public Ratio CapacitorUse { get; init; } = 95.percent;

    /// <summary>Of a transistor's greatest current gain, left at its greatest current.</summary>
    [Symbol("k_h")]
    public Ratio GainLeft { get; init; } = 60.percent;

    /// <summary>Pairs of output transistors where the designer chose them; as few as are enough when not given.</summary>
    [Symbol("n")]
    public int? Pairs { get; init; }

    /// <summary>Idle dissipation of a channel at high mains, at most, where the designer set it; what the pairs come to when not given.</summary>
    [Symbol("P_idlemax")]
    public Power? IdleHeat { get; init; }

    /// <summary>The most pairs of output transistors that are tried.</summary>
    public int MostPairs { get; init; } = 12;

    /// <summary>The most reservoirs of a rail.</summary>
    public int MostReservoirs { get; init; } = 6;

    /// <summary>Voice coil over the rated load, dc.</summary>
    [Symbol("k_vc")]
    public Ratio VoiceCoil { get; init; } = 72.5.percent;
}
