[assembly: EightOhm.Room("SecondStages", "the second voltage stage: current, dissipation, errors, recovery")]
