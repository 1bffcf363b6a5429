using UnitsNet;

namespace EightOhm.Quantities;

/// <summary>What a designer does with levels: a gain raises one, two differ by a gain, and a voltage or a power has one.</summary>
/// <example><code>4.dBu.Voltage          // 1.228 V
/// 1.228.V.dBV              // 1.784 dBV
/// -10.dBV + 30.dB          // 20 dBV
/// 4.dBu - 0.dBu            // a gain of 4 dB</code></example>
public static class LevelAlgebra
{
    extension(ElectricPotential v)
    {
        /// <summary>The level of a voltage (rms, greater than 0 V) over √0.6 V.</summary>
        public DbuLevel dBu => DbuLevel.Of(v);

        /// <summary>The level of a voltage (rms, greater than 0 V) over 1 V.</summary>
        public DbvLevel dBV => DbvLevel.Of(v);
    }

    extension(Power p)
    {
        /// <summary>The level of an average power (greater than 0 W) over 1 W.</summary>
        public DbwLevel dBW => DbwLevel.Of(p);

        /// <summary>The level of an average power (greater than 0 W) over 1 mW.</summary>
        public DbmLevel dBm => DbmLevel.Of(p);
    }

    extension(Pressure p)
    {
        /// <summary>The level of a sound pressure (rms, greater than 0 Pa) over 20 µPa.</summary>
        public SoundPressureLevel dB_SPL => SoundPressureLevel.Of(p);
    }

    extension<T>(T)
        where T : struct, ILevel<T>
    {
        /// <summary>A level raised by a gain: decibels add.</summary>
        public static T operator +(T level, Gain gain) => T.FromDecibels(level.Decibels + gain.Decibels);

        /// <summary>A level lowered by a gain.</summary>
        public static T operator -(T level, Gain gain) => T.FromDecibels(level.Decibels - gain.Decibels);

        /// <summary>The gain from one level to another of the same reference.</summary>
        public static Gain operator -(T to, T from) => Gain.FromDecibels(to.Decibels - from.Decibels);

        /// <summary>The level below its reference by as much: -10.dBV is −10 dBV.</summary>
        public static T operator -(T level) => T.FromDecibels(-level.Decibels);

        /// <summary>Refused: two levels do not add as decibels.</summary>
        [Obsolete("Two levels do not add: add a gain (4.dBu + 6.dB), or add what is behind them (a.Voltage + b.Voltage, a.Power + b.Power).", error: true)]
        public static T operator +(T a, T b) => T.FromDecibels(a.Decibels + b.Decibels);
    }
}
