[assembly: EightOhm.Room("Feedback", "transfer functions, loops and their stability, compensation, errors, slew rate")]
