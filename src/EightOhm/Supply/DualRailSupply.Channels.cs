using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Supply;

/// <content>What several channels make of the rails, and the rails as an output stage sees them.</content>
public sealed partial class DualRailSupply
{
    private const int LinePoints = 64;

    /// <summary>Both rails when everything has settled and several channels play the same sine in phase.</summary>
    /// <param name="channels">How many channels play; 1 or more.</param>
    /// <param name="peak">Peak current of one channel into its load (not rms); 0 A or more.</param>
    /// <param name="signal">Frequency of the sine; such as 1.kHz.</param>
    /// <param name="besides">What each rail gives away beside the half-waves, all channels together: front ends and drivers; 0 A or more.</param>
    /// <returns>Both rails and the winding.</returns>
    /// <example><code>var at8 = dual.Playing(n_ch, I_pk, 1.kHz, I_small);</code></example>
    /// <inheritdoc cref="SteadyState(RailCurrent, RailCurrent)"/>
    [Worked("the reservoir's differential equation marched in closed pieces until a period repeats itself")]
    public DualSteadySupply Playing(int channels, ElectricCurrent peak, Frequency signal, ElectricCurrent besides) =>
        SteadyState(RailCurrent.Playing(channels, peak, signal, besides));

    /// <summary>The lowest that a rail gets while it carries its own peak and several channels play the same sine in phase, over all phases between mains and signal.</summary>
    /// <param name="channels">How many channels play; 1 or more.</param>
    /// <param name="peak">Peak current of one channel into its load (not rms); 0 A or more.</param>
    /// <param name="signal">Frequency of the sine; such as 20.Hz.</param>
    /// <param name="besides">What each rail gives away beside the half-waves, all channels together; 0 A or more.</param>
    /// <returns>The rail to count on.</returns>
    /// <inheritdoc cref="SteadyState(RailCurrent, RailCurrent)"/>
    [Worked("the settled supply solved at each phase between mains and signal, the lowest of them")]
    public ElectricPotential LowestVoltageAtLoadPeak(int channels, ElectricCurrent peak, Frequency signal, ElectricCurrent besides) =>
        LowestVoltageAtLoadPeak(RailCurrent.Playing(channels, peak, signal, besides));

    /// <summary>The mean rail, both loaded alike, at a mean current from each.</summary>
    /// <param name="mean">Mean current from each rail; 0 A or more.</param>
    /// <returns>The rail from the common point, mean over the ripple.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The current is negative.</exception>
    /// <exception cref="ShortfallException">The current is more than the winding can carry.</exception>
    [Worked("the mean of the settled rail at that constant current: SteadyState")]
    public ElectricPotential RailAt(ElectricCurrent mean) => Guard.NotNegative(mean) > default(ElectricCurrent)
        ? SteadyState(RailCurrent.Constant(mean)).PositiveMean
        : Peak - Drop;

    /// <summary>The mean rail over the mean current from each rail, both loaded alike: what an output stage takes as its supply.</summary>
    /// <remarks>From no current to where half of the winding's peak is left, through points that lie ever closer towards no current, where the rail falls fastest.
    /// <see cref="RailLine.AtMains"/> gives what <c>AtMains(x).Line()</c> would solve anew.</remarks>
    /// <returns>The rail of all channels together; <see cref="RailLine.OfOne"/> makes it that of one channel.</returns>
    /// <example><code>var rail = dual.Line().OfOne(n_ch, I_small);</code></example>
    [Worked("the settled supply solved at mean currents ever closer towards none, straight between them")]
    public RailLine Line()
    {
        // A constant current that leaves half of the peak is within this.
        var most = Peak.Volts / (HalfResistance + DiodeResistance + (2 * SharedResistance)).Ohms;
        var points = new List<(ElectricCurrent mean, ElectricPotential rail)> { (default, Peak - Drop) };
        for (var k = 1; k <= LinePoints; k++)
        {
            var mean = ElectricCurrent.FromAmperes(most * Math.Pow((double)k / LinePoints, 3));
            try
            {
                points.Add((mean, RailAt(mean)));
            }
            catch (ShortfallException) when (k > 1)
            {
                break;
            }

            if (points[^1].rail < Peak / 2)
                break;
        }

        return RailLine.OfCircuit(points, Peak);
    }

    /// <summary>This supply as it is when the switch closes.</summary>
    /// <param name="line">Mains, rms, at the deviation that this supply stands at; greater than 0 V.</param>
    /// <param name="lineResistance">Of the mains before the socket; greater than 0 Ω unless the primary has some.</param>
    /// <param name="limiter">The limiter; <see cref="InrushLimiter.None"/> for none.</param>
    /// <param name="bypass">When the limiter is bypassed; greater than 0 s, at most 60 s.</param>
    /// <param name="idle">What each rail feeds meanwhile, all channels together: it keeps the rails low and makes the second surge; 0 A or more.</param>
    /// <returns>What <see cref="SoftStart"/> follows and <see cref="InrushPeaks"/> bounds.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Worked("this supply with its impedances referred to the secondary, as the switch closes")]
    public SwitchOn SwitchedOn(ElectricPotential line, ElectricResistance lineResistance, InrushLimiter limiter, Duration bypass, ElectricCurrent idle)
    {
        var turns = Guard.Positive(line) / Half;
        return new(line, Mains, Half, Reservoir, Guard.NotNegative(lineResistance) + (turns * turns * SharedResistance), HalfResistance + DiodeResistance + CapacitorEsr, Drop, limiter, bypass, idle);
    }

    private ElectricPotential Peak => Half * Math.Sqrt(2);
}
