"""The roll plan: patterns placed on cloth as it is sold."""
