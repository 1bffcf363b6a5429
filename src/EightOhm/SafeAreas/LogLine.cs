using System.Runtime.CompilerServices;
using EightOhm.Devices;
using EightOhm.Numerics;

namespace EightOhm.SafeAreas;

/// <summary>A safe-area line in plain numbers: the same corners and the same straight lines on a log-log chart, without allocation.</summary>
internal sealed class LogLine
{
    private readonly double[] _lnV;
    private readonly double[] _lnI;
    private readonly int _break;

    public LogLine(SafeAreaLine line)
    {
        _lnV = [.. line.Points.Select(p => Math.Log(p.Voltage.Volts))];
        _lnI = [.. line.Points.Select(p => Math.Log(p.Current.Amperes))];
        _break = line.Break;
        LnTime = line.Pulse is { } t ? Math.Log(t.Seconds) : double.PositiveInfinity;
    }

    /// <summary>The logarithm of the pulse length in seconds; infinite for dc.</summary>
    public double LnTime { get; }

    /// <summary>The logarithm of the current at which the chart is cut off: bond wires and metal.</summary>
    public double LnTop => _lnI[0];

    /// <summary>The logarithm of the current set by dissipation: between its corners straight, beyond them at their power.</summary>
    public double Heat(double lnV)
    {
        if (lnV <= _lnV[0])
            return _lnI[0] + _lnV[0] - lnV;
        return lnV >= _lnV[_break] ? _lnI[_break] + _lnV[_break] - lnV : At(lnV, 0);
    }

    /// <summary>Whether second breakdown sets the line there.</summary>
    public bool Breaks(double lnV) => lnV >= _lnV[_break] && _break < _lnV.Length - 1;

    /// <summary>The logarithm of the current set by second breakdown, or by dissipation where that does not show.</summary>
    public double SecondBreakdown(double lnV) => Breaks(lnV) ? At(lnV, _break) : Heat(lnV);

    // The last straight line goes on past the last corner: up to V_CEO there may be a little way to go.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private double At(double lnV, int first) => Interpolation.Linear(_lnV.AsSpan(first), _lnI.AsSpan(first), lnV);
}
