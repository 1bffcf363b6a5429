namespace EightOhm.Teaching;

/// <summary>How much an exercise asks.</summary>
public enum ExerciseLevel
{
    /// <summary>One formula, one step.</summary>
    WarmUp,

    /// <summary>Several steps, each from the chapter.</summary>
    Steps,

    /// <summary>A choice of the student's own, judged against several limits.</summary>
    Design,
}
