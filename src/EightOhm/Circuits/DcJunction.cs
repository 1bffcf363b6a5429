namespace EightOhm.Circuits;

/// <summary>An exponential junction in Newton's method: its voltage from step to step, held from overshooting.</summary>
internal sealed class DcJunction(double saturation, double thermal)
{
    /// <summary>Where the exponential's bend is sharpest: V_T·ln(V_T/(√2·I_S)), the start of each junction that is to conduct.</summary>
    public double Critical { get; } = thermal * Math.Log(thermal / (Math.Sqrt(2) * saturation));

    /// <summary>The voltage about which it is made straight.</summary>
    public double Voltage { get; set; }

    /// <summary>Whether the last step was held.</summary>
    public bool Held { get; private set; }

    /// <summary>e^(V/V_T) − 1 times I_S, A.</summary>
    public double Current => saturation * (Math.Exp(Math.Min(Voltage / thermal, 500)) - 1);

    /// <summary>Its slope, S.</summary>
    public double Slope => saturation * Math.Exp(Math.Min(Voltage / thermal, 500)) / thermal;

    /// <summary>Goes towards a voltage: upwards beyond the bend by the logarithm of the step.</summary>
    public void Towards(double wished)
    {
        var to = wished;
        if (wished > Critical && wished - Voltage > 2 * thermal)
            to = Voltage > 0 ? Voltage + (thermal * Math.Log(1 + ((wished - Voltage) / thermal))) : Critical;
        Held = Math.Abs(to - wished) > 1e-6 * thermal;
        Voltage = to;
    }
}
