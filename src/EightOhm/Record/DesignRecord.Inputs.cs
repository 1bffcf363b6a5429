using EightOhm.Devices;
using EightOhm.Quantities;

namespace EightOhm.Record;

/// <content>What the designer may move: targets, choices, assumptions, parts.</content>
public sealed partial class DesignRecord
{
    /// <summary>What the amplifier must do: power, load, sensitivity, noise, the conditions of use. A value set from outside (<see cref="Set"/>) wins over the chapter's, and is shown openly.</summary>
    /// <remarks>A changed value in the chapter is kept beside the one set; only <see cref="ClearSet"/> ends a set value, even if the chapter then says the same.</remarks>
    /// <typeparam name="T">The quantity.</typeparam>
    /// <param name="name">The symbol.</param>
    /// <param name="value">The chapter's value; finite.</param>
    /// <param name="note">What the chapter says about it; kept from before when left out.</param>
    /// <returns>The value in force, in its SI unit.</returns>
    /// <exception cref="RecordException">The name is taken by something else or is not a symbol.</exception>
    /// <exception cref="ArgumentException">The type is not a kind of quantity that EightOhm knows.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The value is below zero where nothing can be (a power, a resistance, a temperature below 0 K).</exception>
    public T Target<T>(string name, T value, string? note = null)
        where T : struct => Input(name, value, EntryRole.Target, note, null);

    /// <summary>A decision of the designer. A value set from outside wins over it (<see cref="Set"/>).</summary>
    /// <typeparam name="T">The quantity.</typeparam>
    /// <param name="name">The symbol.</param>
    /// <param name="value">The chapter's value; finite.</param>
    /// <param name="because">The reason; kept from before when left out.</param>
    /// <param name="considered">What else was considered; kept from before when left out.</param>
    /// <inheritdoc cref="Target{T}(string, T, string?)"/>
    public T Choose<T>(string name, T value, string? because = null, string? considered = null)
        where T : struct => Input(name, value, EntryRole.Choice, because, considered);

    /// <summary>A guess, listed (<see cref="Assumptions"/>) until something confirms it: a measurement or a datasheet makes it a choice or a part.</summary>
    /// <typeparam name="T">The quantity.</typeparam>
    /// <param name="name">The symbol.</param>
    /// <param name="value">The chapter's value; finite.</param>
    /// <param name="basis">What it rests on; kept from before when left out.</param>
    /// <inheritdoc cref="Target{T}(string, T, string?)"/>
    public T Assume<T>(string name, T value, string? basis = null)
        where T : struct => Input(name, value, EntryRole.Assumption, basis, null);

    /// <summary>A transistor's card in a role.</summary>
    /// <inheritdoc cref="Part{T}(string, string)"/>
    public Transistor Part(string role, string file) => Part<Transistor>(role, file);

    /// <summary>The transistor in a role, as the record has it.</summary>
    /// <inheritdoc cref="Part{T}(string)"/>
    public Transistor Part(string role) => Part<Transistor>(role);

    /// <summary>A device's card in a role. Its entry is called as the role, with _ for a blank; what was computed from it is stale when the card's text changes.</summary>
    /// <typeparam name="T">The kind of card: <see cref="RectifierBridge"/>, <see cref="Relay"/>, ….</typeparam>
    /// <param name="role">The role, such as "bridge".</param>
    /// <param name="file">The card, from the record's folder: "cards/bridge.json".</param>
    /// <returns>The device in force: that of the chapter's card, unless another card was set.</returns>
    /// <exception cref="CardException">The card is missing or damaged.</exception>
    /// <exception cref="RecordException">The role's name is taken by something else or makes no symbol, or the card is of another kind.</exception>
    public T Part<T>(string role, string file)
        where T : DeviceCard
    {
        ArgumentNullException.ThrowIfNull(role);
        ArgumentException.ThrowIfNullOrWhiteSpace(file);
        var name = EntryNames.Check(role.Trim().Replace(' ', '_'));
        lock (_gate)
        {
            var before = For(name, EntryRole.Part, null);
            var slot = before with { Value = OfKind(name, typeof(T), _parts.Load(_parts.Relative(file))) };
            if (before.Value is PartFile { CardType: var was } && was != typeof(T))
                throw new RecordException($"{name} is {before.KindName} already and cannot be {CardKinds.Of(typeof(T)).InWords} too. Choose another role, or remove it first: record.Remove(\"{name}\").");
            // A set card is read again as well: the chapter is at work with what it holds now.
            if (slot.Override is PartFile set)
                slot = slot with { Override = OfKind(name, typeof(T), _parts.Load(set.File)) };
            Put(slot);
            Look();
            return DeviceOf<T>(slot);
        }
    }

    /// <summary>The device in a role, as the record has it.</summary>
    /// <typeparam name="T">The kind of card.</typeparam>
    /// <param name="role">The role, such as "bridge".</param>
    /// <exception cref="RecordException">No part of that kind has that role, or its card cannot be read.</exception>
    public T Part<T>(string role)
        where T : DeviceCard
    {
        ArgumentNullException.ThrowIfNull(role);
        lock (_gate)
        {
            var slot = Known(role.Trim().Replace(' ', '_'));
            if (slot.Role != EntryRole.Part)
                throw new RecordException($"{slot.Name} is {slot.Role.InWords()}, not a part.");
            if (slot.Type != typeof(T))
                throw new RecordException($"{slot.Name} is {slot.KindName}, not {CardKinds.Of(typeof(T)).InWords}.");
            Look();
            return DeviceOf<T>(slot);
        }
    }

    /// <summary>Sets an input from outside, as typed: it wins over the chapter's value until <see cref="ClearSet"/>.</summary>
    /// <param name="name">The symbol of a target, a choice, an assumption or a part.</param>
    /// <param name="text">The value with its unit, such as "120 W"; for a part its card's file.</param>
    /// <exception cref="RecordException">There is no such input, or the text is not a value of its kind.</exception>
    public void Set(string name, string text)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(text);
        lock (_gate)
        {
            var slot = Settable(name);
            Put(slot with { Override = slot.Kind is { } kind ? SetText.Read(slot.Name, text, kind) : SetCard(slot, text.Trim()) });
        }
    }

    /// <summary>Puts an input back to what its chapter says.</summary>
    /// <param name="name">The symbol of a target, a choice, an assumption or a part.</param>
    /// <exception cref="RecordException">There is no such input.</exception>
    public void ClearSet(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        lock (_gate)
            Put(Settable(name) with { Override = null });
    }

    private T Input<T>(string name, T value, EntryRole role, string? note, string? considered)
        where T : struct
    {
        name = EntryNames.Check(name);
        var kind = QuantityKinds.Of(typeof(T));
        lock (_gate)
        {
            var slot = For(name, role, kind);
            Put(slot with { Value = KeptValue.Input(name, kind, value), Note = Words.Clean(note) ?? slot.Note, Considered = Words.Clean(considered) ?? slot.Considered });
            return (T)_evaluation.Of(name).Value!;
        }
    }

    private PartFile SetCard(Slot slot, string file)
    {
        try
        {
            return OfKind(slot.Name, slot.Type, _parts.Load(_parts.Relative(file)));
        }
        catch (CardException e)
        {
            throw new RecordException($"{slot.Name}: {e.Message}", e);
        }
    }

    private static PartFile OfKind(string name, Type kind, PartFile part) => part.CardType == kind
        ? part
        : throw new RecordException($"{name}: {part.File} is {CardKinds.Of(part.CardType).InWords}; {CardKinds.Of(kind).InWords} is expected.");

    private T DeviceOf<T>(Slot slot)
        where T : DeviceCard => _evaluation.ArgumentOf(slot.Name) as T
        ?? throw NoValue(slot.Name, _evaluation.Of(slot.Name));

    private Slot Settable(string name)
    {
        var inputs = _content.InOrder.Where(s => s.Role.IsInput()).ToList();
        var slot = _content.Find(name.Normalize()) ?? throw new RecordException($"The record has no {name} to set. {There(inputs, "What can be set:")}");
        if (slot.Role.IsInput())
            return slot;
        var roots = Ancestry.Of(_content, slot.Name).Where(s => s.Role.IsInput()).ToList();
        throw new RecordException(roots.Count == 0 || slot.HangsOnAll
            ? $"{slot.Name} is computed and cannot be set. {There(inputs, "What can be set:")}"
            : $"{slot.Name} is {slot.Role.InWords()} from {Lists.And([.. roots.OrderBy(r => r.Order).Select(r => r.Name)])}; set {(roots.Count == 1 ? "that" : "one of those")}.");
    }
}
