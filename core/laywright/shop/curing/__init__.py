"""Cure by time and temperature."""
