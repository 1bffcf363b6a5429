[assembly: EightOhm.Room("Loads", "loudspeakers and cables as the amplifier sees them")]
