[assembly: EightOhm.Room("InputStages", "input network, pair, mirrors and current sources, offset, servo")]
