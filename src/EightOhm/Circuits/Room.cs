[assembly: EightOhm.Room("Circuits", "circuits by names and nodes: drawn, and solved for small signals and operating points")]
