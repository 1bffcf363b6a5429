[assembly: EightOhm.Room("Ratings", "what a specification says: levels, ratings, audits of sheets")]
