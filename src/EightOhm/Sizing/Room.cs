[assembly: EightOhm.Room("Sizing", "from what an amplifier must do to a first choice of its parts")]
