using EightOhm.Quantities;
using EightOhm.Teaching;

namespace EightOhm.Tests.Teaching;

/// <summary>Exercises by name and seed. The seed is one for the process, so these run when nothing else does.</summary>
[Collection(nameof(Record.Alone))]
public sealed class SeedTests : IDisposable
{
    public void Dispose() => Exercise.Seed = 0;

    [Fact]
    public void The_seed_in_force_is_that_of_exercises_asked_from_then_on()
    {
        Exercise.Seed = 42;
        Assert.Equal(Exercise.Of("05-ripple", seed: 42).Question, Exercise.Of("05-ripple").Question);
        Assert.Equal("05-ripple, warm-up, numbers of seed 42", Exercise.Of("05-ripple").Title);
        Exercise.Seed = 0;
        Assert.Equal("05-ripple, warm-up", Exercise.Of("05-ripple").Title);
    }

    // A key that was printed must stay true: whoever changes the numbers of a seed tells of it in the changelog.
    [Theory]
    [InlineData("05-ripple", 42, "A bridge at 50 Hz charges 10 mF, which feeds 4 A. What does the usual estimate give for the ripple, peak to peak?")]
    [InlineData("06-worst-level", 7, "Class B, a resistor for a load, ideal transistors: at full swing the load gets 120 W. What does it get at the level at which the transistors are hottest?")]
    public void The_numbers_of_a_seed_stay(string id, int seed, string question) => Assert.Equal(question, Exercise.Of(id, seed).Question);

    [Fact]
    public void A_bad_seed_is_refused_in_words()
    {
        var e = Assert.ThrowsAny<ArgumentException>(() => Exercise.Seed = -1);
        Assert.Contains("A seed is a whole number such as 42", e.Message, StringComparison.Ordinal);
        Assert.Contains("0 gives the book's own numbers", Assert.ThrowsAny<ArgumentException>(() => Exercise.Of("05-ripple", -3)).Message, StringComparison.Ordinal);
        Assert.ThrowsAny<ArgumentException>(() => TeacherKey.Of(-1));
    }

    [Fact]
    public void An_unknown_name_is_told_the_names_of_its_chapter()
    {
        Assert.Contains("Chapter 05 has 05-ripple, ", Assert.Throws<ArgumentException>(() => Exercise.Of("05-riple")).Message, StringComparison.Ordinal);
        Assert.Contains("Its name begins with the chapter: 00, 01, ", Assert.Throws<ArgumentException>(() => Exercise.Of("ripple")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_teachers_own_exercise_draws_as_well()
    {
        Exercise.Seed = 0;
        Assert.Equal(3.A, Exercise.Numbers("05-mine").Pick(3.A, 2.A, 1.A));
        var drawn = Enumerable.Range(1, 30).Select(s =>
        {
            Exercise.Seed = s;
            return Exercise.Numbers("05-mine").Pick(3.A, 2.A, 1.A);
        });
        Assert.Equal(3, drawn.Distinct().Count());
        Assert.Throws<ArgumentException>(() => Exercise.Numbers("05-mine").Pick<int>());
        Assert.Contains("is not a name of an exercise", Assert.Throws<ArgumentException>(() => Exercise.Ask("?", 3.V).As("mine")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_key_has_every_exercise_with_answer_solution_and_misconceptions()
    {
        var key = TeacherKey.Of(42);
        Assert.Equal(CourseExercises.All.Select(e => e.Id), key.Exercises.Select(e => e.Id));
        Assert.All(key.Exercises, e =>
        {
            Assert.True(e.Misconceptions.Count >= 2);
            Assert.All(e.Misconceptions, m => Assert.True(m.Given.Length > 0 && m.Says.Length > 0));
            Assert.NotEmpty(e.Solution.Steps);
            Assert.Equal(Exercise.Of(e.Id, 42).Question, e.Question);
        });
    }
}
