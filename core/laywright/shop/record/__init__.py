"""What was really made: weighed, compared, learnt from."""
