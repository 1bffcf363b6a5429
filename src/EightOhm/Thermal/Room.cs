[assembly: EightOhm.Room("Thermal", "heat paths, networks, sinks, tracking and runaway")]
