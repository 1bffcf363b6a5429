using EightOhm.Noise;
using EightOhm.Quantities;

namespace EightOhm.Tests.Noise;

public class NoiseBudgetTests
{
    private static readonly NoiseContribution Feedback = new("feedback network", 1.nV_rtHz), Pair = new("input pair", 2.nV_rtHz), Mirror = new("mirror", 2.nV_rtHz);
    private readonly NoiseBudget _budget = new([Feedback, Mirror, Pair]);

    [Fact]
    public void Parts_are_ranked_and_their_squares_add()
    {
        Assert.Equal([Pair, Mirror, Feedback], _budget.Ranked);
        Assert.Equal(Pair, _budget.Largest);
        Assert.Equal(3e-9, _budget.Total.Si, 1e-21);
        Assert.Equal(4 / 9.0, _budget.ShareOf("mirror").DecimalFractions, 1e-14);
        Assert.Equal(1, _budget.Ranked.Sum(p => _budget.ShareOf(p.Name).DecimalFractions), 1e-14);
    }

    [Fact]
    public void Halving_the_largest_buys_what_the_others_leave()
    {
        Assert.Equal(Math.Sqrt(6) * 1e-9, _budget.TotalWithLargestHalved.Si, 1e-21);
        Assert.Equal(10 * Math.Log10(9 / 6.0), _budget.Gained.Decibels, 1e-12);
        Assert.Equal(2, new NoiseBudget([Pair]).Gained.Ratio, 1e-14);
    }

    [Fact]
    public void Equality_is_by_the_parts_whatever_their_order()
    {
        var other = new NoiseBudget([Pair, Feedback, Mirror]);
        Assert.Equal(_budget, other);
        Assert.Equal(_budget.GetHashCode(), other.GetHashCode());
        Assert.NotEqual(_budget, new NoiseBudget([Pair, Feedback]));
    }

    [Fact]
    public void A_budget_keeps_its_own_copy_of_the_list()
    {
        var list = new List<NoiseContribution> { Pair };
        var budget = new NoiseBudget(list);
        list.Add(Mirror);
        Assert.Single(budget.Ranked);
    }

    [Fact]
    public void What_is_no_budget_is_refused_with_what_to_do()
    {
        Assert.Contains("\"mirror\" stands in the budget twice", Assert.Throws<ArgumentException>(() => new NoiseBudget([Mirror, Mirror])).Message, StringComparison.Ordinal);
        Assert.Contains("there are \"input pair\", \"mirror\", \"feedback network\"", Assert.Throws<ArgumentException>(() => _budget.ShareOf("miror")).Message, StringComparison.Ordinal);
        Assert.Equal(
            "the total of the noise budget must be greater than 0 V/√Hz (was 0 V/√Hz). Give at least one contribution above zero: shares of nothing have no value.",
            Assert.Throws<RefusedValueException>(() => new NoiseBudget([])).Message);
        Assert.Throws<RefusedValueException>(() => new NoiseBudget([new("none", 0.nV_rtHz)]));
        Assert.Equal(
            "the density of \"pair\" must be 0 V/√Hz or more (was −1 nV/√Hz). Give its magnitude, rms: noise has no sign.",
            Assert.Throws<RefusedValueException>(() => new NoiseContribution("pair", (-1).nV_rtHz)).Message);
        Assert.Throws<ArgumentException>(() => new NoiseContribution(" ", 1.nV_rtHz));
    }
}
