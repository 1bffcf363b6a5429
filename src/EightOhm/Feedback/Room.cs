[assembly: EightOhm.Room("Feedback", "fraction, loop gain, errors, slew rate")]
