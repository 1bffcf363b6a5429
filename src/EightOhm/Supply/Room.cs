[assembly: EightOhm.Room("Supply", "mains, rectifier, reservoirs, rails, switching on and off")]
