using UnitsNet;
using static EightOhm.Circuits.PhysicalNumbers;

namespace EightOhm.Circuits;

/// <summary>A device whose current is no straight line of its voltages, in Newton's method.</summary>
internal interface IDcDevice
{
    Element Element { get; }

    /// <summary>Whether a junction's last step was held, so that the point is not there yet.</summary>
    bool Held { get; }

    /// <summary>Back to the start: conducting.</summary>
    void Start();

    /// <summary>Goes towards the voltages of a solution.</summary>
    void Towards(ReadOnlySpan<double> x);

    /// <summary>Adds its currents and slopes about its voltages.</summary>
    void Add(DcEquations equations);
}

/// <summary>A bipolar transistor: I_C = I_S·(e^(V_BE/V_T) − e^(V_BC/V_T))·(1 + V_CE/V_A) − I_S·(e^(V_BC/V_T) − 1), I_B = I_S/h_FE·(e^(V_BE/V_T) − 1) + I_S·(e^(V_BC/V_T) − 1).</summary>
/// <remarks>The transport model, its reverse current gain taken as one: it decides only how deep a saturated device sits. Source: Sedra &amp; Smith, Microelectronic Circuits, 5th ed., sec. 5.1.</remarks>
internal sealed class DcBipolar : IDcDevice
{
    private readonly int c, b, e;
    private readonly double sign, early;
    private readonly BipolarModel model;
    private readonly DcJunction forward, reverse;
    private double gain;

    public DcBipolar(Element element, int c, int b, int e)
    {
        (Element, this.c, this.b, this.e, model) = (element, c, b, e, (BipolarModel)element.Model!);
        sign = element.Kind == ElementKind.Npn ? 1 : -1;
        early = model.EarlyVoltage is { } v ? 1 / v.Volts : 0;
        double saturation = model.SaturationCurrent.Amperes, thermal = ThermalVolts(model.Junction);
        (forward, reverse) = (new(saturation, thermal), new(saturation, thermal));
        Start();
    }

    public Element Element { get; }

    public bool Held => forward.Held || reverse.Held;

    /// <summary>Collector current, its sign that of the device: positive where it conducts.</summary>
    public double Collector => ((forward.Current - reverse.Current) * Stretch) - reverse.Current;

    public double Base => (forward.Current / gain) + reverse.Current;

    /// <summary>Magnitudes of the way round the device: V_BE and V_CE as of an npn.</summary>
    public double BaseEmitter => forward.Voltage;

    public double CollectorEmitter => forward.Voltage - reverse.Voltage;

    /// <summary>Small-signal values at the point.</summary>
    public BipolarPoint Point
    {
        get
        {
            var (dc_be, dc_bc, db_be, db_bc) = Slopes();
            // I_C of v_BE with v_CE held; v_BC = v_BE − v_CE.
            double g_o = -dc_bc, g_m = dc_be + dc_bc;
            return new(Math.Max(Collector, 0), Math.Max(Base, 0), g_m + db_bc, db_be, g_o - db_bc, db_bc);
        }
    }

    private double Stretch => 1 + (early * Math.Max(CollectorEmitter, 0));

    public void Start()
    {
        (forward.Voltage, reverse.Voltage) = (forward.Critical, 0);
        gain = BipolarPoint.GainAt(model, Math.Max(forward.Current, 1e-12));
    }

    public void Towards(ReadOnlySpan<double> x)
    {
        double vc = At(x, c), vb = At(x, b), ve = At(x, e);
        forward.Towards(sign * (vb - ve));
        reverse.Towards(sign * (vb - vc));
        // The gain follows the current from step to step; its slope is small.
        gain = BipolarPoint.GainAt(model, Math.Max(Collector, 1e-12));
    }

    public void Add(DcEquations equations)
    {
        var (dc_be, dc_bc, db_be, db_bc) = Slopes();
        double v_be = forward.Voltage, v_bc = reverse.Voltage;
        // Into the collector and the base, about the voltages held; a pnp's currents and voltages are turned together.
        Current(equations, c, dc_be, dc_bc, Collector - (dc_be * v_be) - (dc_bc * v_bc));
        Current(equations, b, db_be, db_bc, Base - (db_be * v_be) - (db_bc * v_bc));
        Current(equations, e, -dc_be - db_be, -dc_bc - db_bc, -(Collector + Base - ((dc_be + db_be) * v_be) - ((dc_bc + db_bc) * v_bc)));
        // So that no node is loose while a device is off: a slope alone, which moves no solution.
        equations.Loose(c, e, At(equations.X, c) - At(equations.X, e));
        equations.Loose(b, e, At(equations.X, b) - At(equations.X, e));
    }

    private static double At(ReadOnlySpan<double> x, int i) => i < 0 ? 0 : x[i];

    private (double C_be, double C_bc, double B_be, double B_bc) Slopes()
    {
        double f = forward.Slope, r = reverse.Slope, stretch = Stretch, bend = CollectorEmitter > 0 ? early * (forward.Current - reverse.Current) : 0;
        return ((f * stretch) + bend, (-r * stretch) - bend - r, f / gain, r);
    }

    private void Current(DcEquations equations, int into, double by_be, double by_bc, double rest)
    {
        equations.Slope(into, b, by_be + by_bc);
        equations.Slope(into, e, -by_be);
        equations.Slope(into, c, -by_bc);
        equations.Leaves(into, sign * rest);
    }
}

/// <summary>A diode: I = I_S·(e^(V/(n·V_T)) − 1).</summary>
internal sealed class DcDiode : IDcDevice
{
    private readonly int a, k;
    private readonly DcJunction junction;

    public DcDiode(Element element, int a, int k)
    {
        var model = (DiodeModel)element.Model!;
        (Element, this.a, this.k) = (element, a, k);
        junction = new(model.SaturationCurrent.Amperes, model.EmissionCoefficient * ThermalVolts(model.Junction));
        Start();
    }

    public Element Element { get; }

    public bool Held => junction.Held;

    public double Through => junction.Current;

    public double Voltage => junction.Voltage;

    public void Start() => junction.Voltage = junction.Critical;

    public void Towards(ReadOnlySpan<double> x) => junction.Towards((a < 0 ? 0 : x[a]) - (k < 0 ? 0 : x[k]));

    public void Add(DcEquations equations)
    {
        double slope = junction.Slope, rest = junction.Current - (slope * junction.Voltage);
        equations.Slope(a, a, slope);
        equations.Slope(a, k, -slope);
        equations.Slope(k, a, -slope);
        equations.Slope(k, k, slope);
        equations.Leaves(a, rest);
        equations.Leaves(k, -rest);
        equations.Loose(a, k, (a < 0 ? 0 : equations.X[a]) - (k < 0 ? 0 : equations.X[k]));
    }
}

/// <summary>An operational amplifier with its greatest and least output: between them straight, at them bent by a hyperbolic tangent.</summary>
internal sealed class DcOpAmp(Element element, int plus, int minus, int output, int branch) : IDcDevice
{
    private readonly OpAmpModel model = (OpAmpModel)element.Model!;
    private double input;

    public Element Element => element;

    public bool Held { get; private set; }

    /// <summary>Whether the output stands at one of its ends: less than a twentieth of the gain is left.</summary>
    public bool IsSaturated => Value(input).Slope < 0.05 * model.Gain.Ratio;

    public void Start() => (input, Held) = (0, false);

    public void Towards(ReadOnlySpan<double> x)
    {
        var wished = (plus < 0 ? 0 : x[plus]) - (minus < 0 ? 0 : x[minus]) + model.Offset.Volts;
        // Beyond the ends nothing is to be seen of where the middle is: go there by at most twice the width.
        var width = Width / model.Gain.Ratio;
        var to = double.IsFinite(width) ? Math.Clamp(wished, input - (2 * width), input + (2 * width)) : wished;
        Held = Math.Abs(to - wished) > 1e-9 * width && double.IsFinite(width) && Math.Abs(Value(to).Output - Value(wished).Output) > 1e-9;
        input = to;
    }

    public void Add(DcEquations equations)
    {
        var (value, slope) = Value(input);
        var scale = 1 / model.Gain.Ratio;
        equations.Slope(branch, output, scale);
        equations.Slope(branch, branch, -scale * model.OutputResistance.Ohms);
        equations.Slope(branch, plus, -slope * scale);
        equations.Slope(branch, minus, slope * scale);
        equations.Leaves(branch, -scale * (value - (slope * (input - model.Offset.Volts))));
        equations.Slope(output, branch, 1);
    }

    private double Width => ((model.HighestOutput?.Volts ?? double.PositiveInfinity) - (model.LowestOutput?.Volts ?? double.NegativeInfinity)) / 2;

    private (double Output, double Slope) Value(double v)
    {
        double half = Width, a = model.Gain.Ratio;
        if (!double.IsFinite(half))
            return (a * v, a);
        var middle = (model.HighestOutput!.Value.Volts + model.LowestOutput!.Value.Volts) / 2;
        var t = Math.Tanh(((a * v) - middle) / half);
        // A thread of slope beyond the ends, so that a latched amplifier can be left again.
        return (middle + (half * t), Math.Max(a * (1 - (t * t)), 1e-9 * a));
    }
}
