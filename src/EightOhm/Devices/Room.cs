[assembly: EightOhm.Room("Devices", "transistors, bridges, capacitors, transformers, sinks and relays from their cards")]
