"""What the skin is: materials, plies, thickness, mass, stiffness and strength."""
