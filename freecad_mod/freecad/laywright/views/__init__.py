"""How stage objects look in the tree and in the 3D view."""
