using EightOhm.Explaining;
using EightOhm.Quantities;
using EightOhm.Samples;
using UnitsNet;

namespace EightOhm.Thermal;

/// <summary>The temperatures of a network's nodes over time.</summary>
public sealed class ThermalTransient
{
    private readonly ThermalNetwork _network;
    private readonly double[] _seconds;
    private readonly double[][] _rises;

    internal ThermalTransient(ThermalNetwork network, double[] times, double[][] rises) => (_network, _seconds, _rises) = (network, times, rises);

    /// <summary>How long it was followed.</summary>
    public Duration End => Duration.FromSeconds(_seconds[^1]);

    /// <summary>The highest temperature of any node at any of the instants.</summary>
    public Temperature Hottest => At(_rises.Max(r => r.Max()));

    /// <summary>The temperatures at the last instant.</summary>
    public NodeTemperatures Last => new(_network, [.. _rises.Select(r => r[^1])]);

    /// <summary>The temperature of a node over time.</summary>
    /// <param name="name">The node's name.</param>
    /// <exception cref="ArgumentException">There is no node of that name.</exception>
    [Worked("the computed instants of that node")]
    public Waveform<Temperature> Of(string name) => new(_seconds,
        NodeTemperatures.Find(_network, name) is { Index: >= 0 } node
            ? [.. _rises[node.Index].Select(r => _network.AmbientTemperature.Kelvins + r - Constants.ZeroCelsius)]
            : [.. _seconds.Select(_ => _network.AmbientTemperature.Kelvins - Constants.ZeroCelsius)]);

    /// <summary>The highest temperature of a node at any of the instants.</summary>
    /// <param name="name">The node's name.</param>
    /// <exception cref="ArgumentException">There is no node of that name.</exception>
    [Worked("the highest of the computed instants")]
    public Temperature Peak(string name) => NodeTemperatures.Find(_network, name) is { Index: >= 0 } node ? At(_rises[node.Index].Max()) : _network.AmbientTemperature;

    private Temperature At(double rise) => Temperature.FromKelvins(_network.AmbientTemperature.Kelvins + rise);
}
