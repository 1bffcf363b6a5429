using System.Numerics;
using System.Runtime.Intrinsics;
using EightOhm.Circuits;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Tests.Circuits;

/// <summary>Frequencies side by side give what each gives alone, in registers of either width.</summary>
public class SweepTests
{
    private static readonly double[] Omegas = [.. Enumerable.Range(0, 203).Select(k => Math.Tau * Math.Pow(10, 8.0 * k / 202))];

    public static TheoryData<int, int> Ladders => new() { { 1, 1 }, { 2, 2 }, { 3, 5 }, { 4, 8 }, { 5, 13 } };

    [Theory]
    [MemberData(nameof(Ladders))]
    public void Lanes_give_what_single_frequencies_give(int seed, int sections)
    {
        var at = Excitation.At(Networks.Ladder(seed, sections), "n0", 300);
        var watch = at.Watch($"n{sections}", "0");
        foreach (var wide in Widths())
        {
            var (forward, adjoint) = (new Taker(at.System.Count), new Taker(at.System.Count));
            // Few need to be done alone, though the parts lie decades apart.
            Assert.InRange(SweepSolver.Solve(at.System, Omegas, at.Drive, watch, new Both(forward, adjoint), wide), 0, Omegas.Length / 4);
            for (var i = 0; i < Omegas.Length; i += 7)
            {
                var (x, y) = SingleSolver.At(at.System, new Complex(0, Omegas[i]), at.Drive, watch);
                Close(x, forward.Values[i], 1e-7);
                Close(y, adjoint.Values[i], 1e-7);
            }
        }
    }

    // Full matrices go through the kernels that take two steps and two rows at once.
    [Theory]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(9)]
    [InlineData(24)]
    public void Full_matrices_too(int n)
    {
        var random = new Random(n);
        var system = new LinearSystem();
        for (var i = 0; i < n; i++)
            system.Unknown();
        for (var i = 0; i < n; i++)
            for (var j = 0; j < n; j++)
                system.Add(i, j, (random.NextDouble() - 0.5 + (i == j ? n : 0)) * 1e-3, (random.NextDouble() - 0.5 + (i == j ? n : 0)) * 1e-10);
        foreach (var wide in Widths())
        {
            var (forward, adjoint) = (new Taker(n), new Taker(n));
            Assert.Equal(0, SweepSolver.Solve(system, Omegas, [(0, 1, 0)], [(n - 1, 1)], new Both(forward, adjoint), wide));
            for (var i = 0; i < Omegas.Length; i += 7)
            {
                var (x, y) = SingleSolver.At(system, new Complex(0, Omegas[i]), [(0, 1, 0)], [(n - 1, 1)]);
                Close(x, forward.Values[i], 1e-12);
                Close(y, adjoint.Values[i], 1e-12);
            }
        }
    }

    [Fact]
    public void Where_the_common_order_does_not_fit_a_frequency_is_done_alone()
    {
        // In the middle of the sweep jω is the larger entry of its column and is taken first; at the low end it is nothing.
        var system = new LinearSystem();
        int a = system.Unknown(), b = system.Unknown();
        system.Add(a, a, 0, 1);
        system.Add(a, b, 1, 0);
        system.Add(b, a, 1, 0);
        system.Add(b, b, 1e-9, 0);
        double[] omegas = [1e-12, 1e-6, 1, 1e3, 1e18];
        foreach (var wide in Widths())
        {
            var x = new Complex[omegas.Length];
            Assert.InRange(SweepSolver.Solve(system, omegas, [(a, 1, 0)], null, new OutputTaker(x, [(a, 1)]), wide), 1, omegas.Length);
            for (var i = 0; i < omegas.Length; i++)
            {
                var expected = -1e-9 / (1 - new Complex(0, omegas[i] * 1e-9));
                Assert.True((x[i] - expected).Magnitude < 1e-9 * expected.Magnitude, $"{omegas[i]}: {x[i]}, {expected}");
            }
        }
    }

    [Fact]
    public void At_a_resonance_the_reactances_cancel()
    {
        var c = new Circuit();
        c.VoltageSource("V1", "in");
        c.Inductor("L1", "in", "x", ElectricInductance.FromHenries(1));
        c.Capacitor("C1", "x", "out", Networks.Farads(1));
        c.Resistor("R1", "out", "0", 1.Ohm);
        var f = Frequency.FromHertz(1 / Math.Tau);
        var r = c.Response("in", "out", [0.01.Hz, f, 1.Hz]);
        Assert.Equal(1, r.Values[1].Real, 1e-9);
        Assert.Equal(0, r.Values[1].Imaginary, 1e-9);
    }

    [Fact]
    public void The_512_bit_path_is_the_256_bit_path()
    {
        if (!Vector512.IsHardwareAccelerated)
            return;
        var at = Excitation.At(Networks.Ladder(9, 6), "n0", 300);
        Complex[] four = new Complex[Omegas.Length], eight = new Complex[Omegas.Length];
        SweepSolver.Solve(at.System, Omegas, at.Drive, null, new OutputTaker(four, at.Watch("n6", "0")), wide: false);
        SweepSolver.Solve(at.System, Omegas, at.Drive, null, new OutputTaker(eight, at.Watch("n6", "0")), wide: true);
        for (var i = 0; i < four.Length; i++)
            Assert.True((four[i] - eight[i]).Magnitude <= 1e-12 * four[i].Magnitude);
    }

    [Fact]
    public void A_delay_turns_the_phase_and_nothing_else()
    {
        var c = Networks.LowPass();
        c.Delay("D1", "out", "late", 10.us);
        c.Resistor("RL", "late", "0", 8.Ohm);
        var plain = c.Response("in", "out");
        var late = c.Response("in", "late");
        foreach (var f in new[] { 10.Hz, 1.kHz, 123.kHz })
        {
            Assert.Equal(plain.MagnitudeAt(f).Ratio, late.MagnitudeAt(f).Ratio, 1e-12);
            Assert.Equal(plain.PhaseAt(f).Degrees - (360 * f.Hertz * 10e-6), late.PhaseAt(f).Degrees, 1e-6 * (1 + f.Kilohertz));
        }
    }

    [Fact]
    public void Floating_nodes_rings_of_sources_and_unknown_names_are_refused_by_name()
    {
        void Refused<T>(string words, Action<Circuit> change, Func<Circuit, object> ask)
            where T : Exception
        {
            var c = Networks.LowPass();
            change(c);
            Assert.Contains(words, Assert.ThrowsAny<T>(() => ask(c)).Message, StringComparison.Ordinal);
        }

        object Ask(Circuit c) => c.Response("in", "out");
        Refused<InvalidOperationException>("Nodes \"x\" and \"y\" hang together", c => c.Resistor("R2", "x", "y", 1.Ohm), Ask);
        Refused<InvalidOperationException>("Node \"x\" has no path to ground (only I1 is on it)", c => c.CurrentSource("I1", "x", "0"), Ask);
        Refused<InvalidOperationException>("V1 and V2 hold voltages in a ring", c => c.VoltageSource("V2", "in"), c => c.Response("V1", "out"));
        Refused<ArgumentException>("Did you mean \"out\"", c => { }, c => c.Response("in", "oit"));
        Refused<ArgumentException>("rising order", c => { }, c => c.Response("in", "out", [1.kHz, 1.kHz]));
        Refused<ArgumentException>("greater than 0", c => { }, c => c.Response("in", "out", [0.Hz, 1.kHz]));
        Refused<ArgumentException>("one frequency or more", c => { }, c => c.Response("in", "out", []));
        Refused<ArgumentException>("Transresistance", c => c.CurrentSource("I1", "out", "0"), c => c.Response("I1", "out"));
        Refused<ArgumentException>("against itself", c => { }, c => c.Response("in", "0"));
        Refused<InvalidOperationException>("The circuit is empty", c => { }, _ => new Circuit().Poles());
    }

    private static IEnumerable<bool> Widths() => Vector512.IsHardwareAccelerated ? [false, true] : [false];

    private static void Close(Complex[] expected, Complex[] found, double relative)
    {
        var size = expected.Max(e => e.Magnitude);
        for (var i = 0; i < expected.Length; i++)
            Assert.True((expected[i] - found[i]).Magnitude <= relative * Math.Max(expected[i].Magnitude, 1e-6 * size), $"{i}: {expected[i]}, {found[i]}");
    }

    private sealed class Taker(int n)
    {
        public Dictionary<int, Complex[]> Values { get; } = [];

        public void Take(int first, int count, int lanes, ReadOnlySpan<double> x)
        {
            for (var lane = 0; lane < count; lane++)
            {
                var values = new Complex[n];
                for (var i = 0; i < n; i++)
                    values[i] = new(x[(i * 2 * lanes) + lane], x[(((i * 2) + 1) * lanes) + lane]);
                Values[first + lane] = values;
            }
        }
    }

    private sealed class Both(Taker forward, Taker adjoint) : ISweepTaker
    {
        void ISweepTaker.Take<T>(int first, int count, ReadOnlySpan<double> x, ReadOnlySpan<double> y)
        {
            forward.Take(first, count, T.Count, x);
            adjoint.Take(first, count, T.Count, y);
        }
    }
}
