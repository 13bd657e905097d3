"""What happens at the bench: mixing, curing, consumables, the sheet, the record."""
