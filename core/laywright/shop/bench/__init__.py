"""Everything else at the bench: release coats, bag, trimming, finish, shopping, the clock."""
