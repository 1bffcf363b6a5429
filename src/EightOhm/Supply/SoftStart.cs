using EightOhm.Numerics;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Supply;

/// <summary>Switch-on followed in time: empty dual reservoirs charge through limiter, transformer and bridge, then the limiter is bypassed.</summary>
/// <remarks>
/// A sine behind resistances; each half-cycle both half windings charge, one a rail (a bridge on a centre-tapped winding), so the primary carries
/// 2·I_s/N_r. Diodes drop a constant voltage. Leakage inductance is left out, which makes the peaks a little high, and so is the core, whose bound is
/// <see cref="Inrush.CoreBound"/>. Marched in steps of 1/4000 of a mains period by the midpoint rule.
/// The mains side of an amplifier kills: local codes and licensed practice come first.
/// </remarks>
public sealed record SoftStart
{
    private const int StepsPerPeriod = 4000, MostPeriods = 6000;
    private const double Share = 0.9;

    // A design asks the same switch-on, at the same corners, for peak, heat, time and pulses in turn.
    private static readonly Recent<SwitchOn, SoftStart> Known = new(32);

    private SoftStart(SwitchOn on, March march)
    {
        FinalRail = (Math.Sqrt(2) * on.HalfWinding) - on.Diode;
        Peak = ElectricCurrent.FromAmperes(march.Peak);
        TimeTo90Percent = march.Reached >= 0 ? Duration.FromSeconds(march.Reached) : null;
        LimiterEnergy = Energy.FromJoules(march.Heat);
        LimiterAtBypass = ElectricResistance.FromOhms(march.Limiter);
        RailAtBypass = ElectricPotential.FromVolts(march.AtBypass);
        Short = ElectricPotential.FromVolts(march.Reached >= 0 ? 0 : Math.Max(0, (Share * FinalRail.Volts) - march.AtBypass));
        BypassPeak = ElectricCurrent.FromAmperes(march.SecondPeak);
        Stored = Discharge.StoredEnergy(on.Reservoir, FinalRail) * 2;
        LimiterEnergyByStep = Stored * (on.Limiter.Cold / (on.Limiter.Cold + on.Primary.Ohms + Inrush.ReflectedHalves(on.HalfResistance, on.Turns).Ohms));
        Pulse = new JouleIntegral(march.SquareTime);
        BypassPulse = new JouleIntegral(march.SecondSquareTime);
        (HalfCycleRails, BypassAt) = (march.Rails, Duration.FromSeconds(march.BypassAt));
        (Mains, Turns, GreatestHalfCycle) = (on.Mains, on.Turns, new JouleIntegral(march.MostHalf));
    }

    /// <summary>The rail that the reservoirs would reach without load.</summary>
    public ElectricPotential FinalRail { get; }

    /// <summary>The greatest primary current before the bypass, peak.</summary>
    public ElectricCurrent Peak { get; }

    /// <summary>When the rails first reach 90 % of <see cref="FinalRail"/>; null when they have not before the bypass: see <see cref="Short"/>.</summary>
    public Duration? TimeTo90Percent { get; }

    /// <summary>What the rails lack of 90 % of <see cref="FinalRail"/> when the bypass closes; 0 V when they had reached it. Bypass later, take a smaller
    /// limiter, or keep the load off until then.</summary>
    public ElectricPotential Short { get; }

    /// <summary>The energy turned into heat in the limiter until the bypass.</summary>
    public Energy LimiterEnergy { get; }

    /// <summary>What the trade's estimate says instead: the energy stored in both reservoirs at the end, times the limiter's share of all resistance. It is for a step of
    /// voltage; a sine rises with the capacitors and wastes less.</summary>
    public Energy LimiterEnergyByStep { get; }

    /// <summary>The energy stored in both reservoirs at <see cref="FinalRail"/>.</summary>
    public Energy Stored { get; }

    /// <summary>The limiter's resistance when the bypass closes: less than at the start for a thermistor.</summary>
    public ElectricResistance LimiterAtBypass { get; }

    /// <summary>The rails when the bypass closes.</summary>
    public ElectricPotential RailAtBypass { get; }

    /// <summary>The second surge: the greatest primary current in the five mains periods after the bypass, peak.</summary>
    public ElectricCurrent BypassPeak { get; }

    /// <summary>I²t of the primary in the five mains periods after the bypass: the second surge.</summary>
    public JouleIntegral BypassPulse { get; }

    /// <summary>Mains frequency.</summary>
    public Frequency Mains { get; }

    /// <summary>Primary turns over those of one half of the secondary.</summary>
    public double Turns { get; }

    /// <summary>I²t of the primary in the one half-cycle that has most of it, before or after the bypass.</summary>
    public JouleIntegral GreatestHalfCycle { get; }

    /// <summary>The greatest current of a diode, peak, before or after the bypass: both half windings charge at once, so it is the primary's times half the turns ratio.</summary>
    public ElectricCurrent DiodePeak => DiodeSurge.OfPrimary(Peak > BypassPeak ? Peak : BypassPeak, Turns);

    /// <summary>I²t of a diode in the half-cycle that has most of it.</summary>
    public JouleIntegral DiodePulse => DiodeSurge.IntegralOfPrimary(GreatestHalfCycle, Turns);

    /// <summary>When the bypass closed.</summary>
    public Duration BypassAt { get; }

    /// <summary>The rails in V at the end of each half-cycle, counted from the closing, until the bypass.</summary>
    internal IReadOnlyList<double> HalfCycleRails { get; }

    /// <summary>I²t of both surges: what the fuse sees.</summary>
    public JouleIntegral WholePulse => new(Pulse.Si + BypassPulse.Si);

    /// <summary>I²t of the primary until the bypass.</summary>
    public JouleIntegral Pulse { get; }

    /// <summary>Follows a switch-on.</summary>
    /// <param name="on">What is switched on.</param>
    /// <returns>Peaks, times and energies; a bypass that closes too soon is told by <see cref="Short"/>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The reservoir is too small for the march, or the bypass too many periods away.</exception>
    public static SoftStart Of(SwitchOn on)
    {
        ArgumentNullException.ThrowIfNull(on);
        return Known.Get(on, o => new SoftStart(o, Run(o, _ => false)));
    }

    /// <summary>Follows a switch-on whose bypass closes as soon as the rails at the ends of the half-cycles say so, at the latest at its own time.</summary>
    internal static SoftStart Of(SwitchOn on, Func<IReadOnlyList<double>, bool> settled) => new(on, Run(on, settled));

    private static March Run(SwitchOn on, Func<IReadOnlyList<double>, bool> settled)
    {
        double f = on.Mains.Hertz, step = 1 / (StepsPerPeriod * f), turns = on.Turns, c = on.Reservoir.Farads, idle = on.Idle.Amperes;
        double top = Math.Sqrt(2) * on.HalfWinding.Volts, drop = on.Diode.Volts, goal = Share * (top - drop), begin = on.Closes.Radians;
        double Resistance(double limiter) => on.HalfResistance.Ohms + (2 * (on.Primary.Ohms + limiter) / (turns * turns));
        // What the winding gives at each half step: the mains repeats itself after a period.
        var winding = new double[2 * StepsPerPeriod];
        for (var i = 0; i < winding.Length; i++)
            winding[i] = (top * Math.Abs(Math.Sin((2 * Math.PI * i / winding.Length) + begin))) - drop;

        double v = 0, kelvin = Constants.ZeroCelsius + 25, ambient = kelvin, limiter = on.Limiter.Cold;
        var march = new March { Reached = -1 };
        Guard.Between(on.Bypass.Seconds * f, 0, MostPeriods, "the mains periods before the bypass", "Check the mains frequency, or bypass sooner.");
        // The midpoint rule follows nothing that is faster than its step: it would swing without end.
        if (Resistance(0) * c < 2 * step)
            Guard.Refuse("reservoir", on.Reservoir, $"{QuantityFormat.Short(ElectricCapacitance.FromFarads(2 * step / Resistance(0)))} or more with so little resistance in the path", "Smaller ones charge within a step of the march; look at the unit of the capacitance.");
        var before = (long)Math.Ceiling(on.Bypass.Seconds / step);
        for (long k = 0; k < before + (5L * StepsPerPeriod); k++)
        {
            if ((k & 1023) == 0)
                Work.Checkpoint();
            var through = k >= before;
            if (k == before)
                (march.AtBypass, march.Limiter, march.BypassAt) = (v, limiter, k * step);
            double t = k * step, r = Resistance(through ? 0 : limiter);
            var place = (int)(2 * k % winding.Length);
            var charging = Math.Max((winding[place] - v) / r, 0);
            var primary = 2 * charging / turns;
            if (through)
                march.SecondPeak = Math.Max(march.SecondPeak, primary);
            else
                march.Peak = Math.Max(march.Peak, primary);
            var half = v + (step / 2 * (charging - (v > 0 ? idle : 0)) / c);
            charging = Math.Max((winding[place + 1] - half) / r, 0);
            var middle = 2 * charging / turns;
            v = Math.Max(v + (step * (charging - (half > 0 ? idle : 0)) / c), 0);
            march.Add((long)Math.Floor((2 * f * t) + (begin / Math.PI)), middle * middle * step);
            if (through)
            {
                march.SecondSquareTime += middle * middle * step;
                continue;
            }

            var heat = middle * middle * limiter * step;
            march.Heat += heat;
            march.SquareTime += middle * middle * step;
            if (k % (StepsPerPeriod / 2) == (StepsPerPeriod / 2) - 1)
            {
                march.Rails.Add(v);
                if (settled(march.Rails))
                    before = k + 1;
            }

            if (march.Reached < 0 && v >= goal)
                march.Reached = t + step;
            if (!on.Limiter.Warms)
                continue;
            kelvin += (heat - (on.Limiter.LossPerKelvin * (kelvin - ambient) * step)) / on.Limiter.HeatCapacity;
            limiter = on.Limiter.Cold * Math.Exp(on.Limiter.B * ((1 / kelvin) - (1 / ambient)));
        }

        return march;
    }

    private sealed class March
    {
        public double Peak { get; set; }

        public double SecondPeak { get; set; }

        public double Reached { get; set; }

        public double Heat { get; set; }

        public double SquareTime { get; set; }

        public double SecondSquareTime { get; set; }

        public double AtBypass { get; set; }

        public double Limiter { get; set; }

        public double BypassAt { get; set; }

        public List<double> Rails { get; } = [];

        public double MostHalf { get; private set; }

        private long half = long.MinValue;
        private double inHalf;

        // A diode conducts in one half-cycle and rests in the next.
        public void Add(long halfCycle, double squareTime)
        {
            (half, inHalf) = (halfCycle, halfCycle == half ? inHalf + squareTime : squareTime);
            MostHalf = Math.Max(MostHalf, inHalf);
        }
    }
}
