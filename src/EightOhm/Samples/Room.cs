[assembly: EightOhm.Room("Samples", "curves and waveforms of quantities, which every room, table and figure shares")]
