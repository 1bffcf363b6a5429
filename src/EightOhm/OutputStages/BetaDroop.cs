using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.OutputStages;

/// <summary>Current gain that falls with current.</summary>
/// <remarks>High-level injection: well above the knee the gain falls as 1/I. No fall at small currents is modelled.</remarks>
public static partial class BetaDroop
{
    private const string Source = "Gray, Hurst, Lewis & Meyer, Analysis and Design of Analog Integrated Circuits, 4th ed., ch. 1: h_FE falls as 1/I_C at high-level injection";

    /// <summary>Current gain at a collector current: h_0/(1 + I/I_k).</summary>
    /// <param name="h_0">Current gain at small current; 1 or more.</param>
    /// <param name="I">Collector current of one device; 0 A or more.</param>
    /// <param name="I_k">The collector current at which it has fallen to half; greater than 0 A.</param>
    /// <returns>The current gain h_FE, a plain number.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>BetaDroop.CurrentGain(100, 5.A, 10.A)   // 66.67</code></example>
    [Formula(Source, Symbol = "h_FE")]
    [RecordName("beta-droop.current-gain")]
    public static double CurrentGain(double h_0, ElectricCurrent I, ElectricCurrent I_k)
    {
        Guard.Between(h_0, 1, 1e9);
        Guard.NotNegative(I);
        Guard.Positive(I_k);
        return h_0 / (1 + I / I_k);
    }

    /// <summary>Base current at a collector current: I/h_0·(1 + I/I_k).</summary>
    /// <param name="h_0">Current gain at small current; 1 or more.</param>
    /// <param name="I">Collector current of one device; 0 A or more.</param>
    /// <param name="I_k">The collector current at which the gain has fallen to half; greater than 0 A.</param>
    /// <returns>The base current, in A.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source, Symbol = "I_B")]
    [RecordName("beta-droop.base-current")]
    public static ElectricCurrent BaseCurrent(double h_0, ElectricCurrent I, ElectricCurrent I_k)
    {
        var h_FE = CurrentGain(h_0, I, I_k);
        return I / h_FE;
    }
}
