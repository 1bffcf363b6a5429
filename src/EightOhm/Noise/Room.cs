[assembly: EightOhm.Room("Noise", "thermal, shot and flicker noise, bandwidths, weighting, budgets")]
