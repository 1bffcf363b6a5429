using EightOhm.Devices;
using EightOhm.Numerics;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Thermal;

/// <summary>The loop of junction temperature, current and heat, stepped through time by the network's modes.</summary>
/// <remarks>In a step the heat is taken as straight from its begin to its end, and the end is found by repetition: exact for the network, second
/// order for the current. Steps are short after each change of the music and grow with the time since, as the temperatures slow down.</remarks>
internal static class BiasSteps
{
    // Beyond this nothing of silicon is left: the transistor has run away.
    private static readonly double Destroyed = Runaway.Destroyed.Kelvins - Constants.ZeroCelsius;

    public static BiasOverTime Run(BiasTracking bias, double end, IReadOnlyList<HeatProfile> music, NodeTemperatures start, int points, double fineness)
    {
        var modes = bias.Network.Modes();
        foreach (var heat in music)
            if (bias.Network.Place(heat.Node) < 0)
                throw new ArgumentException("Heat into the ambient warms nothing: give it to a node.", nameof(music));
        if (start.Network != bias.Network || start.Rises.Length != modes.Rates.Length)
            throw new ArgumentException("The temperatures at the start must be of this network, with all its nodes.", nameof(start));
        double least = Math.Min(2 * fineness / modes.Rates.Max(), end / points), most = end / points;
        List<double> grid = [0];
        double[] changes = [0, .. music.SelectMany(h => h.Times).Where(t => t > 0 && t < end).Distinct().Order(), end];
        for (var i = 0; i + 1 < changes.Length; i++)
        {
            for (var t = changes[i] + least; t < changes[i + 1] - (least / 2); t += Math.Clamp(fineness * (t - changes[i]), least, most))
                grid.Add(t);
            grid.Add(changes[i + 1]);
        }

        return new Stepper(bias, modes, music, start).Follow([.. grid]);
    }

    private sealed class Stepper
    {
        private readonly BiasTracking _bias;
        private readonly NetworkModes _modes;
        private readonly IReadOnlyList<HeatProfile> _music;
        private readonly int[] _junctions;
        private readonly (int Node, double Fall, double Idle)[] _drivers;
        private readonly int _sensor;
        private readonly double[] _state, _trial, _gone, _ramp, _before, _after, _played, _design, _currents;
        private readonly double _voltage, _idle, _resistance, _perKelvin, _tc, _tcSensor, _ambient;

        public Stepper(BiasTracking bias, NetworkModes modes, IReadOnlyList<HeatProfile> music, NodeTemperatures start)
        {
            (_bias, _modes, _music) = (bias, modes, music);
            _junctions = [.. bias.Junctions.Select(j => j.Index)];
            _drivers = [.. bias.Drivers.Select(d => (d.Node.Index, d.Fall.Si, (double)d.Idle.Watts))];
            _sensor = bias.Sensor.Index;
            var n = modes.Rates.Length;
            (_trial, _gone, _ramp, _before, _after, _played) = (new double[n], new double[n], new double[n], new double[n], new double[n], new double[n]);
            _state = NetworkSteps.Start(bias.Network, modes, start);
            _design = bias.Design.Rises;
            _currents = new double[_junctions.Length];
            (_voltage, _idle, _resistance) = (bias.Voltage.Volts, bias.IdleCurrent.Amperes, bias.Resistance.Ohms);
            _perKelvin = Junction.ThermalVoltage(bias.Design.Ambient).Volts / bias.Design.Ambient.Kelvins;
            (_tc, _tcSensor, _ambient) = (bias.JunctionDrift.Si, bias.SensorDrift.Si, bias.Network.AmbientTemperature.Kelvins - Constants.ZeroCelsius);
        }

        public BiasOverTime Follow(double[] grid)
        {
            var current = new double[grid.Length];
            var rises = _design.Select(_ => new double[grid.Length]).ToArray();
            var kept = 0;
            Heats(0, _state, _before);
            while (kept < grid.Length && (kept == 0 || Hot(_state) <= Destroyed))
            {
                if (kept > 0)
                    Step(grid[kept - 1], grid[kept], 0);
                current[kept] = _currents[0];
                for (var i = 0; i < rises.Length; i++)
                    rises[i][kept] = NetworkSteps.At(_modes, _state, i);
                kept++;
            }

            double? gone = Hot(_state) > Destroyed ? grid[kept - 1] : null;
            var transient = new ThermalTransient(_bias.Network, grid[..kept], [.. rises.Select(r => r[..kept])]);
            return new BiasOverTime(_bias, transient, grid[..kept], current[..kept], gone);
        }

        private void Step(double from, double to, int halved)
        {
            Work.Checkpoint();
            var h = to - from;
            for (var m = 0; m < _state.Length; m++)
                (_gone[m], _ramp[m]) = (Decay.Gone(_modes.Rates[m] * h), Decay.Ramp(_modes.Rates[m] * h));
            Heats(from, _state, _before);
            Array.Copy(_before, _after, _after.Length);
            var moved = double.PositiveInfinity;
            for (var pass = 0; pass < 60; pass++)
            {
                for (var m = 0; m < _state.Length; m++)
                {
                    double a = 0, b = 0;
                    for (var i = 0; i < _before.Length; i++)
                        (a, b) = (a + (_modes.Shapes[i][m] * _before[i]), b + (_modes.Shapes[i][m] * _after[i]));
                    _trial[m] = _state[m] + (_gone[m] * ((a / _modes.Rates[m]) - _state[m])) + (_ramp[m] * (b - a) / _modes.Rates[m]);
                }

                moved = Heats(from, _trial, _after);
                if (moved <= 1e-11 * (1 + (_voltage * _idle)))
                {
                    Array.Copy(_trial, _state, _state.Length);
                    return;
                }
            }

            // A stage that runs away is steep: half the step twice. Beyond the end of silicon it need not settle.
            if (halved < 40 && Hot(_state) <= Destroyed)
            {
                var middle = from + (h / 2);
                Step(from, middle, halved + 1);
                Step(middle, to, halved + 1);
            }
            else if (Hot(_state) <= Destroyed)
            {
                throw new InvalidOperationException(FormattableString.Invariant($"The idle current did not settle in the step to {to:G6} s: it was {_currents[0]:G6} A with the junction at {Hot(_trial):G5} °C and the heat still moving by {moved:G3} W."));
            }
        }

        /// <summary>The heat into each node for the temperatures of a state, the music being that of an instant; returns the greatest change.</summary>
        private double Heats(double at, double[] state, double[] heats)
        {
            Array.Clear(_played);
            for (var i = 0; i < _music.Count; i++)
                _played[_music[i].Node.Index] += _music[i].At(at);
            var late = _tcSensor * (NetworkSteps.At(_modes, state, _sensor) - _design[_sensor]);
            foreach (var (node, fall, idle) in _drivers)
            {
                // What the drivers of the chain give way is the outputs' to take, as if the spreader were late by it.
                late -= fall * (NetworkSteps.At(_modes, state, node) - _design[node]);
                _played[node] = Math.Max(_played[node], idle);
            }

            for (var j = 0; j < _junctions.Length; j++)
            {
                var node = _junctions[j];
                var drive = (_tc * (NetworkSteps.At(_modes, state, node) - _design[node])) - late;
                var thermal = _perKelvin * (Constants.ZeroCelsius + _ambient + NetworkSteps.At(_modes, state, node));
                _currents[j] = BiasDrift.Solve(Math.Min(drive, 100 * thermal), _idle, _resistance, thermal, out _);
                _played[node] = Math.Max(_played[node], _voltage * _currents[j]);
            }

            var moved = 0.0;
            for (var i = 0; i < heats.Length; i++)
            {
                moved = Math.Max(moved, Math.Abs(_played[i] - heats[i]));
                heats[i] = _played[i];
            }

            return moved;
        }

        private double Hot(double[] state)
        {
            var most = double.NegativeInfinity;
            for (var j = 0; j < _junctions.Length; j++)
                most = Math.Max(most, NetworkSteps.At(_modes, state, _junctions[j]));
            return _ambient + most;
        }
    }
}
