using EightOhm.Cells.Editing;

namespace EightOhm.Cells.Tests.Editing;

public sealed class TypedPlacesTests
{
    [Theory]
    [InlineData("Explain(() => Sqrt(100.W * 8.Ohm) + x)")]
    [InlineData("Explain(() => Pow(Ra, 1.0/6) + (2 * 1.5).V)")]
    [InlineData("plain + text")]
    public void Every_letter_that_was_typed_is_found_again(string cell)
    {
        var changes = LiteralLift.Changes(cell);
        var lifted = CellText.With(cell, changes);
        var places = new TypedPlaces(changes);
        var at = Enumerable.Range(0, lifted.Length + 1).Select(places.Of).ToList();
        Assert.Equal(at.Order(), at);
        Assert.Equal((0, cell.Length), (at[0], at[^1]));
        // Letters outside the changes are the very same ones.
        for (int i = 0, typed = 0; i < lifted.Length; i++)
        {
            if (at[i + 1] == at[i] + 1 && lifted[i] == cell[at[i]])
                typed++;
            if (i == lifted.Length - 1)
                Assert.True(typed >= cell.Length - changes.Sum(c => c.Span.Length), $"{typed} of {cell.Length} letters are found again.");
        }
    }
}
