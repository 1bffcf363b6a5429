[assembly: EightOhm.Room("Devices", "transistors from their cards")]
