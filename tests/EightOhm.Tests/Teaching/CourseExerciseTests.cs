using System.Text.RegularExpressions;
using EightOhm.Quantities;
using EightOhm.Teaching;
using UnitsNet;

namespace EightOhm.Tests.Teaching;

/// <summary>Every exercise of the course: it knows its slips, takes any unit, tells nothing, and does so for any seed.</summary>
/// <remarks>The tasks judge here without the progress, which would write beside the tests.</remarks>
public class CourseExerciseTests
{
    private static readonly int[] Seeds = [.. Enumerable.Range(0, 51)];

    public static TheoryData<string> Ids => [.. CourseExercises.All.Select(e => e.Id)];

    public static TheoryData<string> Figures => [.. CourseExercises.All.Where(e => e.Level != ExerciseLevel.Design).Select(e => e.Id)];

    public static TheoryData<string> Designs => [.. CourseExercises.All.Where(e => e.Level == ExerciseLevel.Design).Select(e => e.Id)];

    [Theory]
    [MemberData(nameof(Figures))]
    public void An_answer_worked_out_by_hand_is_right_and_two_slips_get_their_sentence(string id)
    {
        var row = ByHand.All[id];
        var exercise = Exercise.Of(id);
        Assert.StartsWith("Right: ", Judge(exercise, row.Right).Says, StringComparison.Ordinal);
        Assert.StartsWith(row.Says, Judge(exercise, row.Wrong).Says, StringComparison.Ordinal);
        Assert.StartsWith(row.OtherSays, Judge(exercise, row.OtherWrong).Says, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_row_by_hand_is_of_an_exercise() => Assert.Empty(ByHand.All.Keys.Except(CourseExercises.All.Select(e => e.Id)));

    [Theory]
    [MemberData(nameof(Figures))]
    public void With_any_seed_the_answer_is_right_in_two_units_and_each_slip_gets_its_sentence(string id)
    {
        foreach (var seed in Seeds)
        {
            var exercise = Exercise.Of(id, seed);
            var task = Assert.IsType<FigureTask>(exercise.Task);
            Assert.True(task.Separated, $"{id}, seed {seed}: a slip cannot be told from the answer {task.Answer} or from another: {string.Join("; ", task.Misconceptions)}");
            Assert.True(task.Slips.Count >= 2, $"{id} has fewer than two slips.");
            Assert.True(Judge(exercise, task.Value).Right);
            Assert.True(Judge(exercise, InAnotherUnit(task.Value)).Right, $"{id}, seed {seed}: {InAnotherUnit(task.Value)}");
            Assert.All(task.Slips, s => Assert.Equal((s.Says, VerdictKind.Wrong), (Judge(exercise, s.Value).Says, Judge(exercise, s.Value).Kind)));
        }
    }

    [Theory]
    [MemberData(nameof(Figures))]
    public void The_sign_the_decade_and_the_kind_are_known(string id)
    {
        var exercise = Exercise.Of(id);
        var task = (FigureTask)exercise.Task;
        var si = task.Kind.ToSi(task.Value);
        if (task.Kind.Style != FormatStyle.Celsius)
        {
            Assert.StartsWith("The size is right, the sign is not", Judge(exercise, task.Kind.FromSi(-si)).Says, StringComparison.Ordinal);
            Assert.StartsWith(task.InDecibels ? "That is 60 dB too large" : "The digits are right; it is a thousand times too large", Judge(exercise, task.Kind.FromSi(si * 1000)).Says, StringComparison.Ordinal);
            Assert.StartsWith(task.InDecibels ? "That is 100 dB too small" : "The digits are right; it is 10 to the power of 5 times too small", Judge(exercise, task.Kind.FromSi(si / 1e5)).Says, StringComparison.Ordinal);
        }

        object other = task.Kind.Type == typeof(Length) ? 1.V : 1.m;
        Assert.Matches("^That is a (voltage|length); .* is asked", Judge(exercise, other).Says);
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Blank_is_no_failure_and_says_how_to_answer(string id)
    {
        var exercise = Exercise.Of(id);
        var verdict = exercise.Check();
        Assert.Equal(VerdictKind.Blank, verdict.Kind);
        Assert.StartsWith("Not answered yet. Answer with Check(", verdict.Says, StringComparison.Ordinal);
        Assert.InRange(exercise.Hintable, 2, 3);
        Assert.False(File.Exists(Path.Combine(Directory.GetCurrentDirectory(), ProgressFile.Name)));
    }

    [Theory]
    [MemberData(nameof(Figures))]
    public void Nothing_tells_the_answer_but_the_right_answer_and_the_solution(string id)
    {
        foreach (var seed in Seeds)
        {
            var exercise = Exercise.Of(id, seed);
            var task = (FigureTask)exercise.Task;
            var answer = Written(task);
            var si = task.Kind.ToSi(task.Value);
            string[] said =
            [
                exercise.ToString(), exercise.Check().ToString(), .. exercise.AllHints, .. task.Slips.Select(s => s.Says),
                .. new[] { 0.1, 0.5, 0.8, 1.3, 2, 7, 1000 }.Select(x => Judge(exercise, task.Kind.FromSi(si * x))).Where(v => !v.Right).Select(v => v.Says),
            ];
            Assert.All(said, text => Assert.DoesNotMatch(answer, text));
            Assert.Contains(task.Answer, exercise.Solution().ToString(), StringComparison.Ordinal);
        }
    }

    [Theory]
    [MemberData(nameof(Designs))]
    public void A_design_task_takes_its_example_and_names_what_a_pitfall_fails(string id)
    {
        foreach (var seed in Seeds)
        {
            var exercise = Exercise.Of(id, seed);
            var task = Assert.IsType<ChoiceTask>(exercise.Task);
            var example = Judge(exercise, task.Example!);
            Assert.True(example.Right, $"{id}, seed {seed}: {string.Join("; ", example.Criteria)} {example.Says}");
            Assert.True(task.Pitfalls.Count >= 2);
            foreach (var (choice, fails) in task.Pitfalls)
            {
                var verdict = Judge(exercise, choice);
                Assert.Equal(VerdictKind.Wrong, verdict.Kind);
                var failed = Assert.Single(verdict.Criteria, c => c.Name == fails);
                Assert.False(failed.Met, $"{id}, seed {seed}: {failed}");
                Assert.Contains($"not met. {failed.Helps}", verdict.ToString(), StringComparison.Ordinal);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Designs))]
    public void A_choice_that_cannot_be_is_judged_in_words(string id)
    {
        var exercise = Exercise.Of(id);
        var task = (ChoiceTask)exercise.Task;
        var example = task.Example!;
        Assert.Contains(example.Length == 1 ? "One value is asked" : $"{example.Length} values are asked", Judge(exercise, [.. example, 1.V]).Says, StringComparison.Ordinal);
        Assert.Contains("That is text", Judge(exercise, [.. example.Select(_ => (object)"much")]).Says, StringComparison.Ordinal);
        var zero = Judge(exercise, [.. example.Select(e => QuantityKinds.Of(e.GetType()).FromSi(0))]);
        Assert.Equal(VerdictKind.Wrong, zero.Kind);
        Assert.DoesNotContain("NaN", zero.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_chapter_has_a_ramp_of_four_or_more()
    {
        Assert.Equal(["00", "01", "02", "03", "04", "05", "06", "07", "08", "09", "11", "12", "14"], CourseExercises.Chapters.Select(c => c.Number));
        Assert.All(CourseExercises.Chapters, c =>
        {
            Assert.True(c.Exercises.Count >= 4);
            Assert.Equal(c.Exercises.OrderBy(e => e.Level).Select(e => e.Id), c.Exercises.Select(e => e.Id));
            Assert.Equal(Enum.GetValues<ExerciseLevel>(), c.Exercises.Select(e => e.Level).Distinct());
            Assert.Single(c.Exercises, e => e.Level == ExerciseLevel.Design);
            Assert.All(c.Exercises, e => Assert.Equal(c.Number, ExerciseId.Chapter(ExerciseId.Checked(e.Id))));
        });
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Seeds_give_other_numbers_and_the_same_seed_the_same(string id)
    {
        Assert.True(Seeds.Select(s => Exercise.Of(id, s).Question).Distinct().Count() >= 3);
        Assert.All(Seeds, s => Assert.Equal(Exercise.Of(id, s).ToString(), Exercise.Of(id, s).ToString()));
    }

    private static Verdict Judge(Exercise exercise, params object[] given) => exercise.Task.Judge(exercise.Question, given);

    private static object InAnotherUnit(object value) => value switch
    {
        Gain gain => gain.Decibels.dB,
        Ratio share => Ratio.FromPartsPerMillion(share.PartsPerMillion),
        double number => number.ratio,
        IQuantity quantity => quantity.ToUnit(quantity.QuantityInfo.UnitInfos.First(u => !u.Value.Equals(quantity.Unit)).Value),
        _ => value,
    };

    // The answer as text, to three and four digits; whole, so that 3 V is not found in 33 V or 3 V/µs.
    private static string Written(FigureTask task)
    {
        string[] texts = task.InDecibels ? [task.Answer] : [QuantityFormat.Short(task.Value, 3), QuantityFormat.Short(task.Value, 4), task.Answer];
        var unit = task.Kind.Style == FormatStyle.Number ? @" ?[°%\p{L}]|" : "";
        return $@"(?<![\d.])({string.Join('|', texts.Select(Regex.Escape))})(?!{unit}[\w/²√.])";
    }
}
