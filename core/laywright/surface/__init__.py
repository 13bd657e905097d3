"""What a part is: triangles with patches, and what can be measured on them."""
