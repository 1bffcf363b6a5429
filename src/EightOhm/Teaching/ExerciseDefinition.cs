namespace EightOhm.Teaching;

/// <summary>An exercise of the course: its name, and how it is made from the numbers of a seed.</summary>
internal sealed record ExerciseDefinition(string Id, ExerciseLevel Level, Func<Numbers, Exercise> Write)
{
    // Numbers drawn may make a slip fall on the answer; then they are drawn again, the same way on every machine.
    private const int Redraws = 100;

    public Exercise Make(int seed)
    {
        for (var redraw = 0; ; redraw++)
        {
            var exercise = Exercise.Drawn(() => Write(new Numbers(Id, seed, redraw)), Id, Level, seed);
            if (exercise.Task.Separated || seed == 0 || redraw == Redraws)
                return exercise;
        }
    }
}
