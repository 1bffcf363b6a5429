using EightOhm.Devices;
using EightOhm.Explaining;
using EightOhm.Quantities;

namespace EightOhm.Sizing;

/// <summary>A choice of the first sizing.</summary>
/// <param name="Name">The entry's name in a design.</param>
/// <param name="Value">A quantity or a number.</param>
/// <param name="Because">Why, without a number: what it was chosen by stays true when a figure moves.</param>
public sealed record SizedChoice(string Name, object Value, string Because)
{
    /// <inheritdoc/>
    public override string ToString()
    {
        var (stem, subscript) = Symbols.Split(Name);
        return $"{stem}{(subscript.Length > 0 ? "_" + subscript : "")} = {QuantityFormat.Short(Value)}: {Because}";
    }
}

/// <summary>A device that the first sizing chose.</summary>
/// <param name="Role">The role in a design, such as "output npn".</param>
/// <param name="Card">The device.</param>
/// <param name="Text">Its card's text.</param>
/// <param name="Because">Why, without a number.</param>
public sealed record SizedPart(string Role, DeviceCard Card, string Text, string Because)
{
    /// <inheritdoc/>
    public override string ToString() => $"{Role}: {Card.Name}, {Because}";
}
