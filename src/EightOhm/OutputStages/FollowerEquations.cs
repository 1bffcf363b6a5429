using System.Numerics;
using System.Runtime.CompilerServices;
using EightOhm.Devices;
using EightOhm.Quantities;
using MathNet.Numerics.RootFinding;

namespace EightOhm.OutputStages;

/// <summary>The equations of a follower stage in plain SI numbers, for as many samples at once as a vector holds.</summary>
/// <remarks>
/// The unknowns are the logarithms of the collector currents of one upper and one lower output device, u = ln(I/A). From them everything
/// upstream follows explicitly, however many stages there are: base currents, driver currents, junction voltages. Two conditions are left:
/// the bases of the first stage stand the bias voltage apart, and their middle is what the source gives.
/// </remarks>
internal sealed class FollowerEquations
{
    private const double Smallest = 1e-18, Largest = 1e3;

    private readonly Stage[] stages;
    private readonly Vector<double> load, source, bases;
    private readonly double pairs;

    public FollowerEquations(EmitterFollowerStage stage)
    {
        (Load, Source, pairs) = (stage.Load.Ohms, stage.Source.Ohms, stage.Pairs);
        (load, source, bases) = (new(Load * pairs), new(Source), new(Source * pairs));
        var lower = stage.Complement ?? stage.Device;
        List<Stage> all = [new(new(stage.Device, stage.EmitterResistor.Ohms), new(lower, stage.EmitterResistor.Ohms), 0, 0)];
        foreach (var drivers in new[] { stage.Drivers, stage.PreDrivers }.OfType<FollowerDrivers>())
            all.Add(new(new(drivers.Device, 0), new(drivers.Complement ?? drivers.Device, 0), 1 / drivers.BetweenEmitters.Ohms, all.Count == 1 ? pairs : 1));
        stages = [.. all];
    }

    public double Load { get; }

    public double Source { get; }

    /// <summary>Thermal voltage of the upper output device.</summary>
    public double V_T => stages[0].Upper.V_T;

    /// <summary>Resistance in the emitter of one upper output device.</summary>
    public double Emitter => stages[0].Upper.R;

    public double Pairs => pairs;

    /// <summary>Both conditions' residues and their slopes at (u_p, u_n), for a bias voltage and an input; the output voltage and its slopes.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Evaluated At(Vector<double> u_p, Vector<double> u_n, Vector<double> bias, Vector<double> input)
    {
        ref readonly var outputs = ref stages[0];
        var (e_p, de_p, b_p, db_p, i_p, di_p) = outputs.Upper.FromLogarithm(u_p);
        var (e_n, de_n, b_n, db_n, i_n, di_n) = outputs.Lower.FromLogarithm(u_n);
        var v_o = load * (i_p - i_n);
        var (o_p, o_n) = (load * di_p, -(load * di_n));
        if (stages.Length == 1)
        {
            var half = new Vector<double>(0.5);
            return new(e_p + e_n - bias, v_o + half * (e_p - e_n) + bases * (b_p - b_n) - input,
                de_p, de_n, o_p + half * de_p + bases * db_p, o_n - half * de_n - bases * db_n, v_o, o_p, o_n);
        }

        return Upstream(new(e_p, de_p, Vector<double>.Zero, b_p, db_p, Vector<double>.Zero), new(e_n, Vector<double>.Zero, de_n, b_n, Vector<double>.Zero, db_n), v_o, o_p, o_n, bias, input);
    }

    // Drivers and pre-drivers: the resistor between the emitters couples the two sides, so both slopes are carried.
    private Evaluated Upstream(Side p, Side n, Vector<double> v_o, Vector<double> o_p, Vector<double> o_n, Vector<double> bias, Vector<double> input)
    {
        for (var k = 1; k < stages.Length; k++)
        {
            ref readonly var stage = ref stages[k];
            var through = (p.E + n.E) * stage.Between;
            var (through_p, through_n) = ((p.E_p + n.E_p) * stage.Between, (p.E_n + n.E_n) * stage.Between);
            p = stage.Upper.Drive(p, stage.Before, through, through_p, through_n);
            n = stage.Lower.Drive(n, stage.Before, through, through_p, through_n);
        }

        var half = new Vector<double>(0.5);
        return new(p.E + n.E - bias, v_o + half * (p.E - n.E) + source * (p.B - n.B) - input,
            p.E_p + n.E_p, p.E_n + n.E_n,
            o_p + half * (p.E_p - n.E_p) + source * (p.B_p - n.B_p), o_n + half * (p.E_n - n.E_n) + source * (p.B_n - n.B_n), v_o, o_p, o_n);
    }

    /// <summary>The bias voltage at which each output's emitter carries a current and the load none; NaN where the drivers would be off.</summary>
    public double BiasVoltage(double idle) => Idle(idle).Voltage;

    /// <summary>The currents in the resistors between the emitters of drivers and pre-drivers while the load takes none.</summary>
    public IReadOnlyList<double> StandingCurrents(double idle) => Idle(idle).Standing;

    private (double Voltage, IReadOnlyList<double> Standing) Idle(double idle)
    {
        double p = idle, n = idle, sum = 0;
        var standing = new List<double>();
        for (var k = 0; k < stages.Length; k++)
        {
            ref readonly var stage = ref stages[k];
            if (k > 0)
            {
                var through = sum * stage.BetweenScalar;
                standing.Add(through);
                p = p * stage.BeforeScalar + through;
                n = n * stage.BeforeScalar + through;
                if (!(p > 0 && n > 0))
                    return (double.NaN, standing);
            }

            sum += stage.Upper.AcrossJunction(ref p) + stage.Lower.AcrossJunction(ref n);
        }

        return (sum, standing);
    }

    /// <summary>The idle current of a bias voltage, in the logarithm so that small ones keep their digits; NaN where there is none in range.</summary>
    public double IdleCurrent(double bias)
    {
        double Residue(double logarithm) => BiasVoltage(Math.Exp(logarithm)) is var v && double.IsNaN(v) ? -bias : v - bias;
        double low = Math.Log(Smallest), high = Math.Log(Largest);
        return Residue(low) < 0 && Residue(high) > 0 && Brent.TryFindRoot(Residue, low, high, 1e-14, 300, out var u) ? Math.Exp(u) : double.NaN;
    }

    /// <summary>A guess of both unknowns from the difference of the emitter currents of one pair: the product of the currents stays what it is at idle, less what the drop on the emitter resistors takes.</summary>
    public (double U_p, double U_n) Guess(double difference, double idle)
    {
        var (m, r) = (Math.Abs(difference), stages[0].Upper.R);
        var large = m / 2 + Math.Sqrt(m * m / 4 + idle * idle);
        var small = 2 * Math.Log(idle) - Math.Log(large) - Math.Max(0, r * (large - 2 * idle) / V_T);
        large = Math.Log(m + Math.Exp(Math.Max(small, -600)));
        return difference >= 0 ? (large, small) : (small, large);
    }

    /// <summary>Residues, their slopes to both unknowns, and the output with its slopes.</summary>
    public readonly record struct Evaluated(
        Vector<double> BiasResidue, Vector<double> InputResidue,
        Vector<double> Bias_p, Vector<double> Bias_n, Vector<double> Input_p, Vector<double> Input_n,
        Vector<double> Output, Vector<double> Output_p, Vector<double> Output_n);

    // One side so far: the voltage from the output node up to its base, the base current, and both slopes of each.
    private readonly record struct Side(Vector<double> E, Vector<double> E_p, Vector<double> E_n, Vector<double> B, Vector<double> B_p, Vector<double> B_n);

    private readonly struct Stage(Device upper, Device lower, double between, double before)
    {
        public readonly Device Upper = upper, Lower = lower;
        public readonly Vector<double> Between = new(between), Before = new(before);

        public double BetweenScalar => Between[0];

        public double BeforeScalar => Before[0];
    }

    // I_B = I/h·(1 + I/I_k), so that h_FE = h/(1 + I/I_k).
    private readonly struct Device(LargeSignalModel device, double outside)
    {
        // Below this emitter current the logarithm goes on as its tangent, so that a step too far leads back instead of nowhere.
        // Far below any driver's current, far above the rounding of volts over ohms.
        private static readonly Vector<double> Least = new(1e-9);

        private readonly Vector<double> v_T = new(Junction.ThermalVoltage(device.Junction).Volts);
        private readonly Vector<double> at1A = new(-Junction.ThermalVoltage(device.Junction).Volts * Math.Log(device.SaturationCurrent.Amperes));
        private readonly Vector<double> inverse = new(1 / (device.CurrentGain ?? double.PositiveInfinity));
        private readonly Vector<double> droop = new(1 / (device.CurrentGain ?? double.PositiveInfinity) / (device.KneeCurrent?.Amperes ?? double.PositiveInfinity));
        private readonly Vector<double> r = new(device.InternalResistance.Ohms + outside);

        public double V_T => v_T[0];

        public double R => r[0];

        /// <summary>Base above the far end of the emitter resistor, base current, emitter current, each with its slope to u.</summary>
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public (Vector<double> E, Vector<double> dE, Vector<double> B, Vector<double> dB, Vector<double> I, Vector<double> dI) FromLogarithm(Vector<double> u)
        {
            var collector = Vector.Exp(u);
            var part = droop * collector;
            var b = collector * (inverse + part);
            var db = collector * (inverse + part + part);
            var (i, di) = (collector + b, collector + db);
            return (v_T * u + at1A + r * i, v_T + r * di, b, db, i, di);
        }

        /// <summary>The next follower upstream: its emitter feeds the bases before it and the resistor between the emitters.</summary>
        public Side Drive(in Side before, Vector<double> bases, Vector<double> through, Vector<double> through_p, Vector<double> through_n)
        {
            var asked = bases * before.B + through;
            var emitter = Vector.Max(asked, Least);
            var (emitter_p, emitter_n) = (bases * before.B_p + through_p, bases * before.B_n + through_n);
            var a = Vector<double>.One + inverse;
            var collector = (emitter + emitter) / (a + Vector.SquareRoot(a * a + new Vector<double>(4) * droop * emitter));
            var dCollector = Vector<double>.One / (a + droop * (collector + collector));
            var b = collector * (inverse + droop * collector);
            var db = (inverse + droop * (collector + collector)) * dCollector;
            var slope = v_T * dCollector / collector + r;
            return new(before.E + v_T * (Vector.Log(collector) + (asked - emitter) / emitter) + at1A + r * asked,
                before.E_p + slope * emitter_p, before.E_n + slope * emitter_n, b, db * emitter_p, db * emitter_n);
        }

        /// <summary>The voltage from base to the far end of the emitter resistor at an emitter current, which becomes the base current.</summary>
        public double AcrossJunction(ref double current)
        {
            var (emitter, a) = (current, 1 + inverse[0]);
            var collector = 2 * emitter / (a + Math.Sqrt(a * a + 4 * droop[0] * emitter));
            current = collector * (inverse[0] + droop[0] * collector);
            return v_T[0] * Math.Log(collector) + at1A[0] + r[0] * emitter;
        }
    }
}
