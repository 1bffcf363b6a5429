using EightOhm.Explaining;
using EightOhm.Quantities;
using EightOhm.Ratings;
using UnitsNet;

namespace EightOhm.Sizing;

/// <summary>What an amplifier must do, and where.</summary>
/// <example><code>new AmplifierTargets { Power = 60.W, Load = 4.Ohm, Line = 120.V, Mains = 60.Hz }</code></example>
public sealed record AmplifierTargets
{
    /// <summary>Rated power of a channel, all channels driven; greater than 0 W.</summary>
    [Symbol("P")]
    public required Power Power { get; init => field = Guard.Positive(value, nameof(Power)); }

    /// <summary>Rated load; greater than 0 Ω.</summary>
    [Symbol("R_L")]
    public required ElectricResistance Load { get; init => field = Guard.Positive(value, nameof(Load)); }

    /// <summary>Minimum rated load, at most the rated load; half of a rated load of 8 Ω or more, else the rated load itself, when not given.</summary>
    [Symbol("R_Lmin")]
    public ElectricResistance? MinimumLoad { get; init; }

    /// <summary>Power of a channel into the minimum rated load; what the same rails give when not given.</summary>
    [Symbol("P_Lmin")]
    public Power? MinimumLoadPower { get; init; }

    /// <summary>Channels that play together; 1 or more.</summary>
    [Symbol("n_ch")]
    public int Channels { get; init => field = Guard.Between(value, 1, 100, nameof(Channels)); } = 2;

    /// <summary>Rms input for rated power; greater than 0 V.</summary>
    [Symbol("V_in")]
    public ElectricPotential Sensitivity { get; init => field = Guard.Positive(value, nameof(Sensitivity)); } = 1.2.V;

    /// <summary>Mains, rms; greater than 0 V.</summary>
    [Symbol("V_line")]
    public ElectricPotential Line { get; init => field = Guard.Positive(value, nameof(Line)); } = 230.V;

    /// <summary>Mains frequency; greater than 0 Hz.</summary>
    [Symbol("f_mains")]
    public Frequency Mains { get; init => field = Guard.Positive(value, nameof(Mains)); } = 50.Hz;

    /// <summary>Mains tolerance, either way; from 0 % to 50 %.</summary>
    [Symbol("m_tol")]
    public Ratio MainsTolerance { get; init => field = Guard.Between(value, Ratio.Zero, 50.percent, nameof(MainsTolerance)); } = 10.percent;

    /// <summary>Air at the sink, at most; above 0 K.</summary>
    [Symbol("T_a")]
    public Temperature Air { get; init => field = Guard.Positive(value, nameof(Air)); } = 35.degC;

    /// <summary>Phase that the rated loads may have, either way; from 0° to 85°.</summary>
    [Symbol("φ_L")]
    public Angle Phase { get; init => field = Guard.Between(value, 0.deg, 85.deg, nameof(Phase)); } = 45.deg;

    /// <summary>Lowest frequency at full power; greater than 0 Hz.</summary>
    [Symbol("f_min")]
    public Frequency Lowest { get; init => field = Guard.Positive(value, nameof(Lowest)); } = 20.Hz;

    /// <summary>Highest frequency at full power; greater than 0 Hz.</summary>
    [Symbol("f_max")]
    public Frequency Highest { get; init => field = Guard.Positive(value, nameof(Highest)); } = 20.kHz;

    /// <summary>The minimum rated load, also where none was given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is above the rated load.</exception>
    internal ElectricResistance LeastLoad
    {
        get
        {
            var least = MinimumLoad ?? (Load >= 8.Ohm ? Load / 2 : Load);
            Guard.Positive(least, "R_Lmin");
            return least <= Load ? least : throw new RefusedValueException("R_Lmin", $"R_Lmin must be at most R_L, {QuantityFormat.Short(Load)} (was {QuantityFormat.Short(least)}): the minimum rated load is the hardest of all.");
        }
    }

    /// <summary>Rated power into the rated load.</summary>
    internal OutputRating Rated => new(Power, Load);
}
