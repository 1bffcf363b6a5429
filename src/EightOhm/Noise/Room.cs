[assembly: EightOhm.Room("Noise", "thermal, shot and flicker noise, pairs and mirrors, bandwidths, weighting, budgets over frequency")]
