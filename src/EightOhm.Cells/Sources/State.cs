namespace EightOhm.Cells.Sources;

/// <summary>What every variable holds at one point of the run. A copy shares its blocks until one of the two writes.</summary>
internal sealed class State(IReadOnlyList<bool> shared)
{
    private const int Block = 32;
    private static int _versions;
    private readonly List<int[]> _blocks = [];
    private readonly List<bool> _own = [];

    /// <summary>Two states of one version hold the same in all variables that more than one function sees.</summary>
    public int Version { get; private set; }

    /// <summary>Whether this point is never reached: behind a return or a throw.</summary>
    public bool IsDead { get; set; }

    public State Copy()
    {
        var copy = new State(shared) { IsDead = true };
        copy.Take(this);
        copy.IsDead = IsDead;
        return copy;
    }

    public Value Get(int slot) => slot / Block < _blocks.Count ? new(_blocks[slot / Block][slot % Block]) : default;

    public void Set(int slot, Value value)
    {
        if (Get(slot) == value)
            return;
        Own(slot / Block)[slot % Block] = value.Id;
        if (shared[slot])
            Version = Interlocked.Increment(ref _versions);
    }

    /// <summary>Takes in what another way to this point brings.</summary>
    /// <returns>Whether that brought anything.</returns>
    public bool Join(State? other, Values values)
    {
        if (other is null || other.IsDead || ReferenceEquals(other, this))
            return false;
        if (IsDead)
        {
            Take(other);
            return true;
        }

        var moved = false;
        var changed = false;
        for (var b = 0; b < other._blocks.Count; b++)
        {
            if (b < _blocks.Count && ReferenceEquals(_blocks[b], other._blocks[b]))
                continue;
            for (var i = 0; i < Block; i++)
            {
                var mine = Get((b * Block) + i);
                var sum = values.Union(mine, new(other._blocks[b][i]));
                if (sum == mine)
                    continue;
                Own(b)[i] = sum.Id;
                changed = true;
                moved |= shared[(b * Block) + i];
            }
        }

        if (moved)
            Version = Interlocked.Increment(ref _versions);
        return changed;
    }

    private void Take(State other)
    {
        _blocks.Clear();
        _blocks.AddRange(other._blocks);
        _own.Clear();
        _own.AddRange(new bool[_blocks.Count]);
        for (var i = 0; i < other._own.Count; i++)
            other._own[i] = false;
        (Version, IsDead) = (other.Version, false);
    }

    private int[] Own(int block)
    {
        while (_blocks.Count <= block)
        {
            _blocks.Add(new int[Block]);
            _own.Add(true);
        }

        if (!_own[block])
        {
            _blocks[block] = [.. _blocks[block]];
            _own[block] = true;
        }

        return _blocks[block];
    }
}
