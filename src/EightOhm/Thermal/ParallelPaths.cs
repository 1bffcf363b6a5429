using EightOhm.Explaining;
using EightOhm.Quantities;

namespace EightOhm.Thermal;

/// <summary>Heat that has two ways between the same two temperatures.</summary>
public static partial class ParallelPaths
{
    /// <summary>Two thermal resistances side by side: θ_1·θ_2/(θ_1 + θ_2).</summary>
    /// <remarks>Only between the same two ends: two devices on one sink are not this, see <see cref="SharedSink"/>.</remarks>
    /// <param name="theta_1">Greater than 0 K/W.</param>
    /// <param name="theta_2">Greater than 0 K/W.</param>
    /// <returns>The two together, in K/W.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A resistance is not positive.</exception>
    [Formula("Incropera & DeWitt, Fundamentals of Heat and Mass Transfer, ch. 3: thermal circuits", Symbol = "theta")]
    [RecordName("parallel-paths.of")]
    public static ThermalResistance Of(ThermalResistance theta_1, ThermalResistance theta_2)
    {
        Guard.Positive(theta_1);
        Guard.Positive(theta_2);
        return theta_1 * (theta_2 / (theta_1 + theta_2));
    }
}
