using System.Globalization;
using System.Numerics;
using System.Runtime.CompilerServices;
using EightOhm.Quantities;

namespace EightOhm.OutputStages;

/// <summary>Newton's method on the two unknowns of a follower stage, a vector of samples at a time, started from the last bias.</summary>
/// <remarks>All arrays are as long as the samples, rounded up to whole vectors. No allocation while solving.</remarks>
internal sealed class FollowerSolver
{
    private const int MostSteps = 200;

    // Steps from 0 V where nothing else helps.
    private const int Led = 256;

    // Of a logarithm of current. Newton squares it, so what is left is below the rounding.
    private const double Near = 1e-7;

    // Volts.
    private const double Left = 1e-4;

    // A step upwards may not multiply a current by more than this (in nepers); downwards the equations are nearly straight.
    private const double Longest = 2;

    private readonly FollowerEquations equations;
    private readonly double[] u_p, u_n, slope_p, slope_n, last_p, last_n;
    private double biasNow = double.NaN, lastStep;

    public FollowerSolver(FollowerEquations equations, int samples)
    {
        this.equations = equations;
        Count = samples;
        var length = Padded(samples);
        (Given, Output) = (new double[length], new double[length]);
        (u_p, u_n, slope_p, slope_n, last_p, last_n) = (new double[length], new double[length], new double[length], new double[length], new double[length], new double[length]);
    }

    public int Count { get; }

    /// <summary>The inputs, or the outputs where these are what is given.</summary>
    public double[] Given { get; }

    /// <summary>The output voltages, after <see cref="Solve"/>.</summary>
    public double[] Output { get; }

    /// <summary>A length in whole vectors.</summary>
    public static int Padded(int samples) => (samples + Vector<double>.Count - 1) / Vector<double>.Count * Vector<double>.Count;

    /// <summary>Solves all samples at a bias.</summary>
    /// <param name="bias">Bias voltage.</param>
    /// <param name="outputGiven">Whether <see cref="Given"/> holds output voltages.</param>
    /// <exception cref="InvalidOperationException">A sample has no solution that the method finds; the message gives its last state.</exception>
    public void Solve(double bias, bool outputGiven = false)
    {
        Given.AsSpan(Count).Fill(Given[Count - 1]); // the lanes beyond the last sample repeat it
        var step = bias - biasNow;
        if (Math.Abs(step) < equations.V_T)
            Predict(step);
        else
            Begin(bias, outputGiven);
        for (var at = 0; at < Given.Length; at += Vector<double>.Count)
        {
            if ((at & 0xFFF) == 0)
                Work.Checkpoint();
            if (Block(at, bias, outputGiven))
                continue;
            // The step in bias may have been too bold here: once more from the guess.
            Begin(bias, outputGiven, at, at + Vector<double>.Count);
            if (!Block(at, bias, outputGiven) && !FromZero(at, bias, outputGiven))
                throw Lost(at, bias, outputGiven);
        }

        biasNow = bias;
    }

    /// <summary>The incremental gain dv_out/dv_in at each sample of the last solution, from the slopes of the equations.</summary>
    /// <param name="gain">Where it goes.</param>
    /// <param name="input">Where the inputs go.</param>
    public void Gain(Span<double> gain, Span<double> input)
    {
        for (var at = 0; at < Given.Length; at += Vector<double>.Count)
        {
            var e = equations.At(new(u_p, at), new(u_n, at), new(biasNow), Vector<double>.Zero);
            var g = (e.Output_n * e.Bias_p - e.Output_p * e.Bias_n) / (e.Bias_p * e.Input_n - e.Bias_n * e.Input_p);
            for (var i = 0; i < Vector<double>.Count && at + i < Count; i++)
                (gain[at + i], input[at + i]) = double.IsFinite(g[i]) && double.IsFinite(e.InputResidue[i]) ? (g[i], e.InputResidue[i]) : throw Lost(at, biasNow, outputGiven: true);
        }
    }

    // Compiled for speed at the first call: in a notebook the first call is the one that is waited for.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private bool Block(int at, double bias, bool outputGiven)
    {
        var (p, n, given, voltage) = (new Vector<double>(u_p, at), new Vector<double>(u_n, at), new Vector<double>(Given, at), new Vector<double>(bias));
        Vector<double> near = new(Near), longest = new(Longest), perVolt = new(Near / Left);
        for (var step = 0; step < MostSteps; step++)
        {
            var e = equations.At(p, n, voltage, given);
            var (residue, in_p, in_n) = outputGiven ? (e.Output - given, e.Output_p, e.Output_n) : (e.InputResidue, e.Input_p, e.Input_n);
            var inverse = Vector<double>.One / (e.Bias_p * in_n - e.Bias_n * in_p);
            var dp = Vector.Min((e.Bias_n * residue - in_n * e.BiasResidue) * inverse, longest);
            var dn = Vector.Min((in_p * e.BiasResidue - e.Bias_p * residue) * inverse, longest);
            p += dp;
            n += dn;
            // A small step is a solution only if little was left to make good before it.
            var left = Vector.Max(Vector.Abs(e.BiasResidue), Vector.Abs(residue)) * perVolt;
            if (!Vector.LessThanAll(Vector.Max(Vector.Max(Vector.Abs(dp), Vector.Abs(dn)), left), near))
                continue;
            (e.Output + e.Output_p * dp + e.Output_n * dn).CopyTo(Output, at);
            p.CopyTo(u_p, at);
            n.CopyTo(u_n, at);
            (in_n * inverse).CopyTo(slope_p, at);
            (-(in_p * inverse)).CopyTo(slope_n, at);
            return true;
        }

        p.CopyTo(u_p, at);
        n.CopyTo(u_n, at);
        return false;
    }

    // Where a driver is nearly off Newton's full steps may go round in a circle: then the block is led there from 0 V, where it idles.
    private bool FromZero(int at, double bias, bool outputGiven)
    {
        var block = Given.AsSpan(at, Vector<double>.Count);
        double[] wanted = [.. block];
        block.Clear();
        Begin(bias, outputGiven, at, at + block.Length);
        var led = true;
        for (var step = 0; step <= Led && led; step++)
        {
            for (var i = 0; i < block.Length; i++)
                block[i] = step == Led ? wanted[i] : wanted[i] * step / Led;
            led = Block(at, bias, outputGiven);
        }

        wanted.CopyTo(block);
        return led;
    }

    // Along the slope of each unknown to the bias, and along the slope's own change where two were met.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Predict(double step)
    {
        var curve = lastStep == 0 ? 0 : step * step / (2 * lastStep);
        Vector<double> s = new(step), c = new(curve), one = new(1);
        for (var at = 0; at < Given.Length; at += Vector<double>.Count)
        {
            Move(u_p, slope_p, last_p);
            Move(u_n, slope_n, last_n);

            void Move(double[] u, double[] slope, double[] last)
            {
                Vector<double> now = new(slope, at), before = new(last, at);
                var move = s * now + c * (now - before);
                (new Vector<double>(u, at) + Vector.Max(Vector.Min(move, one), -one)).CopyTo(u, at);
                now.CopyTo(last, at);
            }
        }

        lastStep = step == 0 ? lastStep : step;
    }

    private void Begin(double bias, bool outputGiven)
    {
        lastStep = 0;
        Begin(bias, outputGiven, 0, Given.Length);
    }

    private void Begin(double bias, bool outputGiven, int from, int to)
    {
        var idle = equations.IdleCurrent(bias);
        if (double.IsNaN(idle))
            idle = 1e-18;
        var loop = equations.Pairs * (equations.Load + (outputGiven ? 0 : equations.Emitter / equations.Pairs));
        for (var i = from; i < to; i++)
            (u_p[i], u_n[i]) = equations.Guess(Given[i] / loop, idle);
    }

    private InvalidOperationException Lost(int at, double bias, bool outputGiven)
    {
        var e = equations.At(new(u_p, at), new(u_n, at), new(bias), new(Given, at));
        var lane = 0;
        for (var i = 0; i < Vector<double>.Count; i++)
            lane = !(Math.Abs(e.BiasResidue[i]) + Math.Abs(e.InputResidue[i]) <= Math.Abs(e.BiasResidue[lane]) + Math.Abs(e.InputResidue[lane])) ? i : lane;
        return new InvalidOperationException(string.Create(CultureInfo.InvariantCulture,
            $"No currents were found for {(outputGiven ? "an output" : "an input")} of {Given[at + lane]:G6} V at a bias of {bias:G6} V. After {MostSteps} steps the upper outputs were at {Math.Exp(u_p[at + lane]):G4} A and the lower at {Math.Exp(u_n[at + lane]):G4} A each, {e.BiasResidue[lane]:G3} V from the bias and {e.InputResidue[lane]:G3} V from the input. Check the sizes of load, resistors and saturation currents."));
    }
}
