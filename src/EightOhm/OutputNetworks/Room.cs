[assembly: EightOhm.Room("OutputNetworks", "coil, Zobel network, output impedance, capacitive loads")]
