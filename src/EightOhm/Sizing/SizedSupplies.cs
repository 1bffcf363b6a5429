using EightOhm.Devices;
using EightOhm.Quantities;

namespace EightOhm.Sizing;

/// <summary>The supplies of one sizing, each made once: the rounds come back to the same ones, and what a supply has solved it keeps.</summary>
/// <param name="targets">What the amplifier must do; of it the mains, the channels and the lowest frequency count.</param>
/// <param name="basis">What is taken for granted.</param>
internal sealed class SizedSupplies(AmplifierTargets targets, SizingBasis basis)
{
    private readonly Dictionary<(TransformerSize, double), MainsTransformer> wound = [];
    private readonly Dictionary<(MainsTransformer, RectifierBridge, ReservoirBank), SizedSupply> made = [];

    /// <summary>With a size wound for a secondary.</summary>
    /// <param name="size">The size.</param>
    /// <param name="volts">Secondary, V.</param>
    /// <param name="bridge">The bridge.</param>
    /// <param name="bank">The reservoirs of a rail.</param>
    public SizedSupply Of(TransformerSize size, double volts, RectifierBridge bridge, ReservoirBank bank)
    {
        if (!wound.TryGetValue((size, volts), out var transformer))
            wound[(size, volts)] = transformer = size.Wound(targets.Line, volts.V, targets.Mains);
        return Of(transformer, bridge, bank);
    }

    /// <summary>With a transformer.</summary>
    /// <param name="transformer">The transformer.</param>
    /// <param name="bridge">The bridge.</param>
    /// <param name="bank">The reservoirs of a rail.</param>
    public SizedSupply Of(MainsTransformer transformer, RectifierBridge bridge, ReservoirBank bank)
    {
        if (!made.TryGetValue((transformer, bridge, bank), out var supply))
            made[(transformer, bridge, bank)] = supply = new(targets, basis, transformer, bridge, bank);
        return supply;
    }
}
