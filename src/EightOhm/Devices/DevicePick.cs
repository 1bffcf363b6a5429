namespace EightOhm.Devices;

/// <summary>What a device must have.</summary>
/// <typeparam name="T">The kind of device.</typeparam>
/// <param name="What">The figure in words: "average current".</param>
/// <param name="Over">The figure of a device over what is needed of it: 1 or more is enough.</param>
public sealed record DeviceNeed<T>(string What, Func<T, double> Over)
    where T : DeviceCard
{
    /// <summary>Whether a device has enough of it.</summary>
    /// <param name="device">The device.</param>
    public bool Enough(T device) => Over(device) >= 1;

    /// <summary>The figure in words.</summary>
    public override string ToString() => What;
}

/// <summary>A device chosen from a set.</summary>
/// <typeparam name="T">The kind of device.</typeparam>
/// <param name="Device">The device.</param>
/// <param name="Needs">What was needed of it.</param>
/// <param name="Short">What it has too little of; none when it is enough.</param>
public sealed record DevicePick<T>(T Device, IReadOnlyList<DeviceNeed<T>> Needs, IReadOnlyList<DeviceNeed<T>> Short)
    where T : DeviceCard
{
    /// <summary>Whether the device is enough.</summary>
    public bool IsEnough => Short.Count == 0;

    /// <summary>Why this one, without a number: what it was chosen by stays true when a figure moves.</summary>
    public string Because => IsEnough
        ? Needs.Count > 0 ? $"the smallest of the set with enough {Lists.And([.. Needs.Select(n => n.What)])}" : "the smallest of the set"
        : $"the nearest of the set; none has enough {Lists.And([.. Short.Select(n => n.What)])}";

    /// <inheritdoc/>
    public override string ToString() => $"{Device.Name}: {Because}";
}
