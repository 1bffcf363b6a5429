[assembly: EightOhm.Room("Protection", "limiters, dc faults, relays, mute")]
