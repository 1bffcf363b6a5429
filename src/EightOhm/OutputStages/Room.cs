[assembly: EightOhm.Room("OutputStages", "dissipation, transfer, bias and drivers of an output stage")]
