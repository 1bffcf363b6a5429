[assembly: EightOhm.Room("SafeAreas", "safe operating areas, load ellipses, the number of pairs")]
