[assembly: EightOhm.Room("SupplyPaths", "what ripple and half-wave currents on the rails leave at the output, decoupling")]
